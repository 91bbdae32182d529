package frillbook.reading;

import frillbook.source.TemplateSource;
import frillbook.template.Phrases;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.LinkedHashMap;
import java.util.Map;

/** The templates that travel with the program. */
public final class PackagedTemplates {
  private PackagedTemplates() {}

  /** They are the same for everybody, so they are read and checked once. */
  private static final class Checked {
    static final WorkbookTemplate TEMPLATE = TemplateReader.read(TemplateSource.packaged());
  }

  /** What they say. */
  public static WorkbookTemplate template() {
    return Checked.TEMPLATE;
  }

  /** The text of each by the name of its file, the first file last. */
  public static Map<String, String> files() {
    TemplateSource source = TemplateSource.packaged();
    Map<String, String> files = new LinkedHashMap<>();
    for (SheetTemplate sheet : template().sheets()) {
      String file = sheet.position().file();
      files.put(file, source.text(file).orElseThrow());
    }
    files.put(Phrases.FILE, source.text(Phrases.FILE).orElseThrow());
    String first = TemplateSource.FIRST_FILE;
    files.put(first, source.text(first).orElseThrow());
    return files;
  }
}
