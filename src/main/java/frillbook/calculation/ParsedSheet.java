package frillbook.calculation;

import java.util.function.Function;
import java.util.function.IntSupplier;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A sheet as the evaluator sees it; its rows are read once, each when it is asked for. */
public final class ParsedSheet implements EvaluationSheet {
  private static final ParsedCell[] NO_CELLS = new ParsedCell[0];

  private final XSSFSheet sheet;
  private final int index;
  private final Function<XSSFCell, Ptg[]> parser;
  private final IntSupplier numbers;
  private final ParsedCell[][] rows;

  /**
   * @param index of the sheet in its workbook, from 0
   * @param parser gives the pieces of a cell's formula
   * @param numbers gives every cell of the workbook one of its own
   */
  ParsedSheet(XSSFSheet sheet, int index, Function<XSSFCell, Ptg[]> parser, IntSupplier numbers) {
    this.sheet = sheet;
    this.index = index;
    this.parser = parser;
    this.numbers = numbers;
    this.rows = new ParsedCell[sheet.getLastRowNum() + 1][];
  }

  private ParsedCell[] cells(int row) {
    if (rows[row] == null) {
      rows[row] = sheet.getRow(row) == null ? NO_CELLS : read(sheet.getRow(row));
    }
    return rows[row];
  }

  private ParsedCell[] read(Row row) {
    ParsedCell[] cells = new ParsedCell[Math.max(0, row.getLastCellNum())];
    for (Cell cell : row) {
      XSSFCell written = (XSSFCell) cell;
      cells[cell.getColumnIndex()] = new ParsedCell(this, written, parser, numbers.getAsInt());
    }
    return cells;
  }

  int index() {
    return index;
  }

  @Override
  public ParsedCell getCell(int row, int column) {
    ParsedCell[] cells = row < rows.length ? cells(row) : NO_CELLS;
    return column < cells.length ? cells[column] : null;
  }

  /** Nothing to clear: the evaluator keeps the results. */
  @Override
  public void clearAllCachedResultValues() {}

  @Override
  public int getLastRowNum() {
    return rows.length - 1;
  }

  @Override
  public boolean isRowHidden(int row) {
    XSSFRow line = sheet.getRow(row);
    return line != null && line.getZeroHeight();
  }
}
