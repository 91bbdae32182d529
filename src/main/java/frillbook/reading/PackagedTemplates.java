package frillbook.reading;

import frillbook.source.TemplateSource;
import frillbook.template.Phrases;
import frillbook.template.SheetTemplate;
import java.util.LinkedHashMap;
import java.util.Map;

/** The templates that travel with the program, as files. */
public final class PackagedTemplates {
  private PackagedTemplates() {}

  /** The text of each by the name of its file, the first file last. */
  public static Map<String, String> files() {
    TemplateSource source = TemplateSource.packaged();
    Map<String, String> files = new LinkedHashMap<>();
    for (SheetTemplate sheet : TemplateReader.read(source).sheets()) {
      String file = sheet.position().file();
      files.put(file, source.text(file).orElseThrow());
    }
    files.put(Phrases.FILE, source.text(Phrases.FILE).orElseThrow());
    String first = TemplateSource.FIRST_FILE;
    files.put(first, source.text(first).orElseThrow());
    return files;
  }
}
