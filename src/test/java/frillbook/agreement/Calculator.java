package frillbook.agreement;

import frillbook.Program;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program that calculates workbooks without a window. */
interface Calculator {
  /** What must be installed for it. */
  Program program();

  /**
   * What {@code workbook}, which is given without values, comes to with one set of inputs typed in
   * after the other.
   *
   * @param inputs a Double, a String or null by the name of the cell
   */
  List<SheetValues> values(XSSFWorkbook workbook, List<Map<String, Object>> inputs)
      throws IOException, InterruptedException;
}
