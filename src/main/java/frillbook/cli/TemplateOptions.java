package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.reading.PackagedTemplates;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.WorkbookTemplate;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What every command asks for that reads the templates. */
final class TemplateOptions {
  @Option(
      names = "--unit",
      paramLabel = "inch|cm",
      defaultValue = "inch",
      description = "Unit of every length: inch or cm. Default: inch.")
  private LengthUnit unit;

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "Read the workbook's templates from DIR instead of the built-in ones.")
  private Path templates;

  @Option(
      names = "--currency",
      paramLabel = "CODE",
      converter = CurrencyCode.class,
      description = {
        "Currency of every price, by its ISO 4217 code.",
        "Default: USD for inch, EUR for cm."
      })
  private String currency;

  LengthUnit unit() {
    return unit;
  }

  /** What was typed; null for nothing. */
  String currency() {
    return currency;
  }

  /** What an input has where nothing is typed for it. */
  Object preset(InputTemplate input) {
    boolean asked = input.kind() == InputKind.CURRENCY && currency != null;
    return asked ? currency : input.preset(unit);
  }

  boolean isOwn() {
    return templates != null;
  }

  WorkbookTemplate template() {
    return templates == null ? PackagedTemplates.template() : TemplateReader.read(folder());
  }

  private TemplateSource folder() {
    if (!Files.isDirectory(templates)) {
      throw new Refusal(
          Refusal.CANNOT,
          "--templates: " + templates + " is not a folder. Name the folder of your templates.");
    }
    return TemplateSource.directory(templates);
  }
}
