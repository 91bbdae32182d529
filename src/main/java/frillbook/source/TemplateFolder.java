package frillbook.source;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Templates that a person keeps in a folder of their own.
 *
 * <p>Nothing outside the folder is read, whatever name a template gives: it may have come from
 * somebody else.
 */
public record TemplateFolder(Path folder) implements TemplateSource {
  /** Twenty times the longest of the built-in ones. */
  private static final int MOST_BYTES = 1_000_000;

  @Override
  public Optional<String> text(String file) {
    try {
      Path path = folder.resolve(file);
      return Files.isRegularFile(path) ? Optional.of(text(file, path)) : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private String text(String file, Path path) {
    try {
      if (!path.toRealPath().startsWith(folder.toRealPath())) {
        throw outside(file);
      } else if (Files.size(path) > MOST_BYTES) {
        throw tooLarge(file, Files.size(path));
      }
      return Files.readString(path);
    } catch (CharacterCodingException e) {
      throw new TemplateFileException(
          "the file " + file + ", which is not UTF-8 text",
          "text in UTF-8",
          "save it as UTF-8 in a text editor");
    } catch (IOException e) {
      throw new TemplateFileException(
          "the file " + file + ", which cannot be read", "a file that you may read", "allow it");
    }
  }

  private static TemplateFileException outside(String file) {
    return new TemplateFileException(
        "the file " + file + ", which lies outside the folder of the templates",
        "a file within it",
        "copy it into the folder and correct the name");
  }

  private static TemplateFileException tooLarge(String file, long bytes) {
    return new TemplateFileException(
        "the file " + file + " of " + bytes + " bytes",
        "at most " + MOST_BYTES,
        "split it into several sheets");
  }
}
