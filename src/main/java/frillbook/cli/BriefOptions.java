package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.template.Form;
import frillbook.template.UnitText;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that make up a brief, the same for every command that takes one. */
final class BriefOptions {
  @Option(names = "--diameter", paramLabel = "LENGTH", description = "Finished diameter, flat.")
  private String diameter;

  @Option(
      names = "--ring-spacing",
      paramLabel = "LENGTH",
      description = "From ring to ring, along a radius.")
  private String ringSpacing;

  @Option(
      names = "--fullness",
      paramLabel = "TIMES",
      description = "Strip length before gathering for each length after it; 2 is double.")
  private String fullness;

  @Option(
      names = "--fabric-width",
      paramLabel = "LENGTH",
      description = "Frill fabric, selvedge to selvedge.")
  private String fabricWidth;

  @Option(
      names = "--input",
      paramLabel = "NAME=VALUE",
      description = "Any input by name, as often as needed; 'frillbook inputs' lists them.")
  private List<String> settings = List.of();

  @Mixin private TemplateOptions source;

  LengthUnit unit() {
    return source.unit();
  }

  boolean hasOwnTemplates() {
    return source.isOwn();
  }

  WorkbookTemplate template() {
    return source.template();
  }

  /** Every input's value: what was typed, or else its default. All mistakes are told at once. */
  Map<String, Object> inputs(Form form) {
    Map<String, Object> values = form.presets(unit());
    List<String> mistakes = new ArrayList<>();
    typed(form, mistakes).forEach((name, text) -> take(form, name, text, values, mistakes));
    if (!mistakes.isEmpty()) {
      throw new Refusal(Refusal.USAGE, mistakes);
    }
    return values;
  }

  private Map<String, String> typed(Form form, List<String> mistakes) {
    Map<String, String> typed = new LinkedHashMap<>();
    note(typed, mistakes, "diameter", diameter);
    note(typed, mistakes, "ring_spacing", ringSpacing);
    note(typed, mistakes, "fullness", fullness);
    note(typed, mistakes, "fabric_width", fabricWidth);
    note(typed, mistakes, UnitText.CURRENCY, source.currency());
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      if (equals < 1) {
        mistakes.add("--input: found \"" + setting + "\". Write it as name=value.");
      } else {
        name(form, setting.substring(0, equals), mistakes)
            .ifPresent(name -> note(typed, mistakes, name, setting.substring(equals + 1)));
      }
    }
    return typed;
  }

  private static void note(
      Map<String, String> typed, List<String> mistakes, String name, String text) {
    String before = text == null ? null : typed.putIfAbsent(name, text);
    if (before != null) {
      mistakes.add(name + ": found \"" + before + "\" and \"" + text + "\". Give it once.");
    }
  }

  private static Optional<String> name(Form form, String typed, List<String> mistakes) {
    try {
      return Optional.of(InputName.of(form, typed));
    } catch (Refusal refusal) {
      mistakes.add(refusal.getMessage());
      return Optional.empty();
    }
  }

  private void take(
      Form form, String name, String text, Map<String, Object> values, List<String> mistakes) {
    try {
      values.put(name, InputText.parse(InputName.input(form, name), text, unit(), form.phrases()));
    } catch (Refusal refusal) {
      mistakes.add(refusal.getMessage());
    }
  }
}
