package frillbook.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A spreadsheet program that calculates files without a window and writes them again. */
interface Calculator {

  /** What must be installed for it. */
  Program program();

  /** Opens every file, calculates it and writes it under the same name into {@code out}. */
  void calculate(List<Path> files, Path out) throws IOException, InterruptedException;
}
