package frillbook.look;

import org.apache.poi.ss.util.CellReference;

/** A rectangle of cells; rows and columns counted from 0, ends included. */
public record Span(String sheet, int firstRow, int lastRow, int firstColumn, int lastColumn) {
  public static Span cell(String sheet, int row, int column) {
    return new Span(sheet, row, row, column, column);
  }

  public static Span column(String sheet, int firstRow, int rows, int column) {
    return new Span(sheet, firstRow, firstRow + rows - 1, column, column);
  }

  /** Whether it has a cell of {@code other}. */
  public boolean meets(Span other) {
    return sheet.equals(other.sheet)
        && firstRow <= other.lastRow
        && other.firstRow <= lastRow
        && firstColumn <= other.lastColumn
        && other.firstColumn <= lastColumn;
  }

  /** Whether it has all cells of {@code other}. */
  public boolean holds(Span other) {
    return with(other).equals(this);
  }

  /** From the first row and column of both to the last. */
  public Span with(Span other) {
    return new Span(
        sheet,
        Math.min(firstRow, other.firstRow),
        Math.max(lastRow, other.lastRow),
        Math.min(firstColumn, other.firstColumn),
        Math.max(lastColumn, other.lastColumn));
  }

  /** Absolute, with the sheet: {@code Brief!$B$5} or {@code 'Every ring'!$B$5:$B$9}. */
  public String reference() {
    String first = new CellReference(sheet, firstRow, firstColumn, true, true).formatAsString();
    if (firstRow == lastRow && firstColumn == lastColumn) {
      return first;
    }
    return first + ":" + new CellReference(lastRow, lastColumn, true, true).formatAsString();
  }
}
