package frillbook.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program that calculates files without a window and writes them again. */
interface Calculator {

  /** What must be installed for it. */
  Program program();

  /** Opens every file, calculates it and writes what it comes to into {@code out}. */
  void calculate(List<Path> files, Path out) throws IOException, InterruptedException;

  /**
   * What was calculated.
   *
   * @param written the workbook that was given
   * @param calculated the name of its file in the folder that was written into
   */
  SheetValues values(XSSFWorkbook written, Path calculated) throws IOException;
}
