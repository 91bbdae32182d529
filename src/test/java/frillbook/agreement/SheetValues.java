package frillbook.agreement;

import frillbook.calculation.WorkbookValues;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row.MissingCellPolicy;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cells behind a workbook's names and their values, whichever program calculated them. */
final class SheetValues {
  private final XSSFWorkbook workbook;
  private final Map<String, List<XSSFCell>> cells;
  private final Function<XSSFCell, Object> value;
  private final Supplier<List<String>> errors;
  private final BiPredicate<XSSFCell, String> digits;

  private SheetValues(
      XSSFWorkbook workbook,
      Map<String, List<XSSFCell>> cells,
      Function<XSSFCell, Object> value,
      Supplier<List<String>> errors,
      BiPredicate<XSSFCell, String> digits) {
    this.workbook = workbook;
    this.cells = cells;
    this.value = value;
    this.errors = errors;
    this.digits = digits;
  }

  private static Map<String, List<XSSFCell>> cells(XSSFWorkbook workbook) {
    Map<String, List<XSSFCell>> cells = new LinkedHashMap<>();
    for (Name name : workbook.getAllNames()) {
      if (name.getSheetIndex() < 0) {
        cells.put(name.getNameName(), cells(workbook, name.getRefersToFormula()));
      }
    }
    return cells;
  }

  /** The values that {@code values} gives for the cells of its {@code workbook}. */
  static SheetValues of(XSSFWorkbook workbook, WorkbookValues values) {
    return new SheetValues(
        workbook, cells(workbook), values::value, values::errors, (cell, text) -> false);
  }

  /** The values another program has saved in the file; nothing is calculated here. */
  static SheetValues stored(XSSFWorkbook workbook) {
    return new SheetValues(
        workbook,
        cells(workbook),
        SheetValues::stored,
        () -> storedErrors(workbook),
        (cell, text) -> false);
  }

  /** The values another program has written for the same cells. */
  SheetValues with(CsvSheets written) {
    return new SheetValues(workbook, cells, written::value, written::errors, written::hasDigits);
  }

  /** Every cell whose value is an error, with its address. */
  List<String> errors() {
    return errors.get();
  }

  /** The value another program has saved in the cell. */
  static Object stored(XSSFCell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    return switch (formula ? cell.getCachedFormulaResultType() : cell.getCellType()) {
      case NUMERIC -> cell.getNumericCellValue();
      case BOOLEAN -> cell.getBooleanCellValue();
      case ERROR -> FormulaError.forInt(cell.getErrorCellValue());
      case BLANK -> "";
      default -> cell.getStringCellValue();
    };
  }

  static List<String> storedErrors(XSSFWorkbook workbook) {
    List<String> errors = new ArrayList<>();
    workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> add(errors, cell))));
    return errors;
  }

  private static void add(List<String> errors, Cell cell) {
    Object value = stored((XSSFCell) cell);
    if (value instanceof FormulaError) {
      errors.add(where((XSSFCell) cell) + " is " + value);
    }
  }

  private static List<XSSFCell> cells(XSSFWorkbook workbook, String reference) {
    AreaReference area = new AreaReference(reference, SpreadsheetVersion.EXCEL2007);
    return Arrays.stream(area.getAllReferencedCells()).map(at -> cell(workbook, at)).toList();
  }

  private static XSSFCell cell(XSSFWorkbook workbook, CellReference at) {
    XSSFSheet sheet = workbook.getSheet(at.getSheetName());
    XSSFRow row = (XSSFRow) CellUtil.getRow(at.getRow(), sheet);
    return row.getCell(at.getCol(), MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  /** The cell at a place; rows and columns are counted from 0. */
  XSSFCell cell(String sheet, int row, int column) {
    return cell(workbook, new CellReference(sheet, row, column, true, true));
  }

  /** The cells of a name, from top to bottom; none where the workbook has no such name. */
  List<XSSFCell> cells(String name) {
    return cells.getOrDefault(name, List.of());
  }

  /** The address of a cell: {@code Brief!B7}. */
  static String where(XSSFCell cell) {
    return WorkbookValues.where(cell);
  }

  Object value(XSSFCell cell) {
    return value.apply(cell);
  }

  /** The value; {@code text}, if the program writes that as it does the number in the cell. */
  Object value(XSSFCell cell, String text) {
    return digits.test(cell, text) ? text : value(cell);
  }

  /** The value of a name's first cell. */
  Object value(String name) {
    return value(cells(name).get(0));
  }

  List<Object> column(String name) {
    return cells(name).stream().map(this::value).toList();
  }
}
