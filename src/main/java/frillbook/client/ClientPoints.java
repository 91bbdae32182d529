package frillbook.client;

import frillbook.calculation.CellFill;
import frillbook.calculation.WorkbookValues;
import frillbook.chart.ChartReferences;
import frillbook.look.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChartSpace;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;

/**
 * Puts the points of a client's picture on the client's sheet itself, as plain values far to the
 * right of what is printed, and has the picture read them there.
 *
 * <p>A chart can hold its points without any cells, but LibreOffice then draws only some of several
 * series of unlike length, and other programs may draw none.
 */
public final class ClientPoints {
  /** Column U; well clear of the page and still found by whoever looks. */
  private static final int FIRST_COLUMN = 20;

  private final XSSFWorkbook plan;
  private final XSSFSheet sheet;
  private final String head;

  /** Where the points of a range of the maker's workbook stand now. */
  private final Map<Span, Span> moved = new HashMap<>();

  /**
   * @param plan the maker's workbook, its formulas with their values
   * @param sheet the client's
   * @param head what stands over the points
   */
  ClientPoints(XSSFWorkbook plan, XSSFSheet sheet, String head) {
    this.plan = plan;
    this.sheet = sheet;
    this.head = head;
  }

  /** A copy of the maker's chart {@code space} that reads its points on the client's sheet. */
  CTChartSpace of(CTChartSpace space) {
    if (moved.isEmpty()) {
      cell(0, FIRST_COLUMN).setCellValue(head);
    }
    CTChartSpace copy = (CTChartSpace) space.copy();
    CTPlotArea plot = copy.getChart().getPlotArea();
    List<Span> ranges = new ArrayList<>();
    ChartReferences.each(
        plot, numbers -> add(numbers.getF(), ranges), words -> add(words.getF(), ranges));
    ChartReferences.each(
        plot,
        numbers -> numbers.setF(move(numbers.getF(), ranges)),
        words -> words.setF(move(words.getF(), ranges)));
    return copy;
  }

  /** Ranges that share cells become one: of petals two series read most of the same points. */
  private static void add(String reference, List<Span> ranges) {
    Span range = ChartReferences.span(reference);
    for (int index = 0; index < ranges.size(); index++) {
      if (ranges.get(index).meets(range)) {
        ranges.set(index, ranges.get(index).with(range));
        return;
      }
    }
    ranges.add(range);
  }

  private String move(String reference, List<Span> ranges) {
    Span range = ChartReferences.span(reference);
    Span whole = ranges.stream().filter(each -> each.holds(range)).findFirst().orElseThrow();
    Span now = moved.computeIfAbsent(whole, this::write);
    int row = now.firstRow() + range.firstRow() - whole.firstRow();
    int rows = range.lastRow() - range.firstRow() + 1;
    return Span.column(now.sheet(), row, rows, now.firstColumn()).reference();
  }

  /** Writes the values of {@code range} into the next free column. */
  private Span write(Span range) {
    List<XSSFCell> cells = ChartReferences.cells(plan, range.reference());
    int column = FIRST_COLUMN + moved.size();
    for (int index = 0; index < cells.size(); index++) {
      Object value = WorkbookValues.stored(cells.get(index));
      if (!value.equals("")) {
        CellFill.fill(cell(index + 1, column), value);
      }
    }
    return Span.column(sheet.getSheetName(), 1, cells.size(), column);
  }

  private XSSFCell cell(int row, int column) {
    XSSFRow line = sheet.getRow(row);
    return (line == null ? sheet.createRow(row) : line).createCell(column);
  }
}
