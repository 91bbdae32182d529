package frillbook.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Puts the bytes of a workbook in their place. */
public final class WorkbookFile {
  private WorkbookFile() {}

  /**
   * Writes a file beside {@code target} and moves it into place, so that there is never half a
   * workbook. Without {@code overwrite} a file that is already there stays as it is.
   *
   * @throws WorkbookFileException when the file is there, is none, or cannot be written
   */
  public static void save(byte[] bytes, Path target, boolean overwrite) {
    Path place = target.toAbsolutePath();
    // Not a folder, and no device either: moving a file into its place would destroy it.
    if (Files.exists(place) && !Files.isRegularFile(place)) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NOT_WRITABLE, target, null);
    } else if (Files.exists(place) && !overwrite) {
      throw new WorkbookFileException(WorkbookFileException.Reason.EXISTS, target, null);
    } else if (!Files.isDirectory(place.getParent())) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NO_FOLDER, target, null);
    }
    try {
      writeBeside(bytes, Files.exists(place) ? place.toRealPath() : place);
    } catch (IOException e) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NOT_WRITABLE, target, e);
    }
  }

  private static void writeBeside(byte[] bytes, Path place) throws IOException {
    Path part = place.resolveSibling("." + place.getFileName() + ".part");
    try {
      // Not a temporary file of the library's: those can be read by their owner alone.
      Files.write(
          part,
          bytes,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE);
      Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
