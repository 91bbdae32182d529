package frillbook.press;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the cells of one workbook as a program of its own. */
public final class PlainWriter {
  private PlainWriter() {}

  /**
   * Reads cells and writes a workbook.
   *
   * @param args where the cells are kept, and the file to write
   */
  public static void main(String[] args) throws IOException {
    PlainCells cells = PlainCells.read(Path.of(args[0]));
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])))) {
      cells.write(out);
    }
  }
}
