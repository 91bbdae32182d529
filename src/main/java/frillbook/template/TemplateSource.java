package frillbook.template;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Where the text of template files comes from. */
@FunctionalInterface
public interface TemplateSource {
  /** The file a template begins with. */
  String FIRST_FILE = "workbook.yaml";

  /**
   * The text of one file, or empty where there is no such file.
   *
   * @throws TemplateFileException when the file is there and must not or cannot be read
   */
  Optional<String> text(String file);

  /** The templates that travel with the program. */
  static TemplateSource packaged() {
    return TemplateSource::packagedText;
  }

  /** The text of each of those by the name of its file, the first file last. */
  static Map<String, String> packagedFiles() {
    Map<String, String> files = new LinkedHashMap<>();
    TemplateReader.read(packaged()).sheets().stream()
        .map(sheet -> sheet.position().file())
        .forEach(file -> files.put(file, packagedText(file).orElseThrow()));
    files.put(FIRST_FILE, packagedText(FIRST_FILE).orElseThrow());
    return files;
  }

  /** Templates that a person keeps in a folder of their own. */
  static TemplateSource directory(Path folder) {
    return new TemplateFolder(folder);
  }

  private static Optional<String> packagedText(String file) {
    String resource = "/workbook-templates/" + file;
    try (InputStream stream = TemplateSource.class.getResourceAsStream(resource)) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
