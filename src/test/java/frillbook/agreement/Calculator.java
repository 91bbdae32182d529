package frillbook.agreement;

import frillbook.Program;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program that calculates workbooks without a window. */
interface Calculator {
  /** What must be installed for it. */
  Program program();

  /**
   * What {@code workbook} comes to with one set of inputs typed in after the other.
   *
   * @param inputs a Double, a String or null by the name of the cell
   * @param file that of the workbook with such inputs, without the values of formulas
   */
  List<SheetValues> values(
      XSSFWorkbook workbook,
      List<Map<String, Object>> inputs,
      Function<Map<String, Object>, byte[]> file)
      throws IOException, InterruptedException;
}
