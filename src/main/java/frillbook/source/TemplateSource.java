package frillbook.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
