package frillbook.calculation;

import java.util.function.Function;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** A cell as the evaluator sees it: a parsed formula, or a value. */
public final class ParsedCell implements EvaluationCell {
  private final ParsedSheet sheet;
  private final XSSFCell cell;
  private final int row;
  private final int column;
  private final int number;
  private final Function<XSSFCell, Ptg[]> parser;
  private Ptg[] formula;
  private CellType type;
  private Object value;

  /** What the formula came to when it was last calculated; not known yet where it is null. */
  private Object result;

  /**
   * @param parser gives the pieces of its formula; asked when they are needed, since a person may
   *     have added formulas that the library does not know
   * @param number its own in the workbook, after those of its neighbours
   */
  ParsedCell(ParsedSheet sheet, XSSFCell cell, Function<XSSFCell, Ptg[]> parser, int number) {
    this.sheet = sheet;
    this.cell = cell;
    this.row = cell.getRowIndex();
    this.column = cell.getColumnIndex();
    this.number = number;
    this.parser = parser;
    refresh();
  }

  /** Takes note of a value that was put into the cell. */
  void refresh() {
    type = cell.getCellType();
    value = type == CellType.FORMULA ? "" : WorkbookValues.stored(cell);
  }

  /** Passes for a cell that holds what its formula came to. */
  void hold(Object result) {
    this.result = result;
    value = result;
    if (result instanceof Double) {
      type = CellType.NUMERIC;
    } else if (result instanceof Boolean) {
      type = CellType.BOOLEAN;
    } else {
      type = result instanceof CellError ? CellType.ERROR : CellType.STRING;
    }
  }

  /** Passes for a cell with a formula again, whose value is not known. */
  void calculateAnew() {
    type = CellType.FORMULA;
    value = "";
  }

  /** Passes for a cell whose formula was never calculated. */
  void forget() {
    result = null;
    calculateAnew();
  }

  /** What the formula came to; null where that is not known. */
  Object result() {
    return result;
  }

  XSSFCell written() {
    return cell;
  }

  /** The formula's pieces, parsed once; empty for a cell without formula. */
  Ptg[] formula() {
    if (formula == null) {
      formula = parser.apply(cell);
    }
    return formula;
  }

  @Override
  public Object getIdentityKey() {
    return this;
  }

  /**
   * Neighbours lie side by side in the evaluator's table, which is quicker to walk through then.
   */
  @Override
  public int hashCode() {
    return number;
  }

  @Override
  public EvaluationSheet getSheet() {
    return sheet;
  }

  @Override
  public int getRowIndex() {
    return row;
  }

  @Override
  public int getColumnIndex() {
    return column;
  }

  @Override
  public CellType getCellType() {
    return type;
  }

  @Override
  public double getNumericCellValue() {
    return (Double) value;
  }

  @Override
  public String getStringCellValue() {
    return (String) value;
  }

  @Override
  public boolean getBooleanCellValue() {
    return (Boolean) value;
  }

  @Override
  public int getErrorCellValue() {
    return value instanceof CellError error
        ? FormulaError.forString(error.text()).getCode()
        : cell.getErrorCellValue();
  }

  @Override
  public CellRangeAddress getArrayFormulaRange() {
    return cell.getArrayFormulaRange();
  }

  /** Templates have no array formulas. */
  @Override
  public boolean isPartOfArrayFormulaGroup() {
    return false;
  }

  @Override
  public CellType getCachedFormulaResultType() {
    return cell.getCachedFormulaResultType();
  }
}
