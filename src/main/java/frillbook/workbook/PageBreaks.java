package frillbook.workbook;

import frillbook.press.Paper;
import frillbook.template.ChartTemplate;
import frillbook.template.RowTemplate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Begins a new printed page where a template says so, and before a chart that would be cut in two,
 * its sentence with it.
 *
 * <p>How much a page holds follows from paper, margins and the scale that makes the sheet one page
 * wide. A maker may print on either paper, and programs and typefaces differ a little, so it is
 * reckoned for both, for a page that holds a twentieth less and for one that holds a twentieth
 * more: where any of them would cut the chart, a page begins.
 */
final class PageBreaks {
  private static final double POINTS_PER_INCH = 72;
  private static final double UNSURE = 0.05;

  private final Page page;
  private final List<Leaf> leaves;

  private PageBreaks(Page page) {
    this.page = page;
    this.leaves =
        Arrays.stream(Paper.values())
            .map(paper -> room(page, paper))
            .flatMap(
                room -> Stream.of(new Leaf(room * (1 - UNSURE)), new Leaf(room * (1 + UNSURE))))
            .toList();
  }

  /** A page being filled; heights in points. */
  private static final class Leaf {
    private final double room;
    private double taken;

    Leaf(double room) {
      this.room = room;
    }

    /** A row that does not fit begins the next page. */
    void put(double height) {
      taken = taken + height > room ? height : taken + height;
    }

    boolean cuts(double height) {
      return taken > 0 && taken + height > room && height <= room;
    }

    void begin() {
      taken = 0;
    }
  }

  /** Sets the breaks of a sheet whose rows have their heights. */
  static void set(Page page, SheetPlaces places) {
    if (page.template().printed() && page.template().pages() == 0) {
      new PageBreaks(page).set(places);
    }
  }

  private void set(SheetPlaces places) {
    int next = 0;
    for (SheetPlaces.Placed placed : places.entries(page.template())) {
      if (placed.entry() instanceof RowTemplate.NewPage) {
        page.sheet().setRowBreak(placed.row() - 1);
        leaves.forEach(Leaf::begin);
        next = placed.row();
      } else if (placed.entry() instanceof ChartTemplate chart) {
        fill(next, placed.row());
        next = placed.row() + chart.height() + ChartWriter.MORE_ROWS;
        chart(placed.row(), next - 1);
      }
    }
  }

  /** Puts rows that may be parted on the page, and on the pages after it. */
  private void fill(int from, int to) {
    for (int row = from; row < to; row++) {
      double height = height(row);
      leaves.forEach(leaf -> leaf.put(height));
    }
  }

  /** The free row under a chart may fall on the next page. */
  private void chart(int from, int free) {
    double height = IntStream.range(from, free).mapToDouble(this::height).sum();
    if (leaves.stream().anyMatch(leaf -> leaf.cuts(height))) {
      page.sheet().setRowBreak(from - 1);
      leaves.forEach(Leaf::begin);
    }
    leaves.forEach(leaf -> leaf.put(height));
    leaves.forEach(leaf -> leaf.put(height(free)));
  }

  private double height(int row) {
    XSSFRow line = page.sheet().getRow(row);
    return line == null ? page.sheet().getDefaultRowHeightInPoints() : line.getHeightInPoints();
  }

  /** Points of rows that one page holds. */
  private static double room(Page page, Paper paper) {
    XSSFSheet sheet = page.sheet();
    XSSFPrintSetup print = sheet.getPrintSetup();
    double across = print.getLandscape() ? paper.height() : paper.width();
    double upwards = print.getLandscape() ? paper.width() : paper.height();
    double wide = across - margin(sheet, PageMargin.LEFT) - margin(sheet, PageMargin.RIGHT);
    double high = upwards - margin(sheet, PageMargin.TOP) - margin(sheet, PageMargin.BOTTOM);
    return high / Math.min(1, wide / page.width());
  }

  private static double margin(XSSFSheet sheet, PageMargin side) {
    return sheet.getMargin(side) * POINTS_PER_INCH;
  }
}
