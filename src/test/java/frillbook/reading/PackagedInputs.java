package frillbook.reading;

import frillbook.source.Mistakes;
import frillbook.source.SourceFile;
import frillbook.source.TemplateSource;
import frillbook.template.InputTemplate;
import frillbook.template.Phrases;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The inputs of the templates that travel with the program, read from those files alone that have
 * some and not checked: whoever wants a brief need not wait for the rest.
 */
public final class PackagedInputs {
  private static final String[] FILES = {
    "brief.yaml", "money.yaml", "for-the-client.yaml", "habits.yaml"
  };

  private PackagedInputs() {}

  /** Every input, in the order of the sheets. */
  public static List<InputTemplate> read() {
    Mistakes mistakes = new Mistakes();
    Extent extent = new Extent();
    List<SheetTemplate> sheets = new ArrayList<>();
    for (String name : FILES) {
      SourceFile file = new SourceFile(name, TemplateSource.packaged().text(name).orElseThrow());
      Scope scope = new Scope(file, Map.of(), Catalogue.NONE, mistakes, extent, 0);
      file.compose(mistakes)
          .map(node -> SheetReader.read(new Block(node, scope, "sheet")))
          .ifPresent(sheets::add);
    }
    mistakes.refuse();
    return new WorkbookTemplate("", new Phrases(Map.of()), sheets).inputs();
  }
}
