package frillbook.workbook;

import frillbook.look.Look;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.Orientation;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How a sheet is printed, scrolled and protected. */
final class PrintSetup {
  private static final double SIDE_MARGIN = 0.6;
  private static final double TOP_MARGIN = 0.6;

  /** Leaves room for the footer. */
  private static final double BOTTOM_MARGIN = 0.8;

  private static final double FOOTER_MARGIN = 0.4;

  /** A client's page has no footer. */
  private static final double CLIENT_TOP_MARGIN = 0.55;

  private static final double CLIENT_BOTTOM_MARGIN = 0.5;

  /** Rows that stay in sight take at most this much of a small screen, in points. */
  private static final double MOST_FROZEN = 220;

  private PrintSetup() {}

  static void set(Page page, SheetPlaces places) {
    XSSFSheet sheet = page.sheet();
    sheet.setDisplayGridlines(false);
    paper(page);
    sheet.setTabColor(Styles.colour(tabColour(page.template().tab())));
    if (!page.template().client()) {
      sheet.getFooter().setLeft("&A");
      sheet.getFooter().setRight("&P");
    }
    if (page.template().client()) {
      printAll(page);
    }
    keepHeadInSight(page, places);
    if (page.template().printed()) {
      repeatHead(page, places);
    } else {
      printNothing(page);
      EvenRows.set(sheet);
    }
    protect(sheet);
  }

  private static String tabColour(SheetTemplate.Tab tab) {
    return switch (tab) {
      case INPUT -> Look.INPUT_EDGE;
      case WORK -> Look.INK;
      case CLIENT -> Look.READY;
      case BACKGROUND -> Look.EDGE;
    };
  }

  private static void paper(Page page) {
    XSSFSheet sheet = page.sheet();
    sheet.setFitToPage(true);
    sheet.setHorizontallyCenter(true);
    XSSFPrintSetup print = sheet.getPrintSetup();
    print.setPaperSize((short) page.setting().paper().code());
    print.setLandscape(page.template().orientation() == Orientation.LANDSCAPE);
    print.setFitWidth((short) 1);
    // Every sheet counts its own pages.
    print.setUsePage(true);
    print.setPageStart((short) 1);
    // 0: as many pages as it takes.
    print.setFitHeight((short) (page.template().pages()));
    sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
    sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
    boolean client = page.template().client();
    sheet.setMargin(PageMargin.TOP, client ? CLIENT_TOP_MARGIN : TOP_MARGIN);
    sheet.setMargin(PageMargin.BOTTOM, client ? CLIENT_BOTTOM_MARGIN : BOTTOM_MARGIN);
    sheet.setMargin(PageMargin.FOOTER, FOOTER_MARGIN);
  }

  /** Words that shrink into their cells still make the sheet wider for some programs. */
  private static void printAll(Page page) {
    XSSFWorkbook workbook = page.sheet().getWorkbook();
    int sheet = workbook.getSheetIndex(page.sheet());
    workbook.setPrintArea(sheet, 0, page.lastColumn(), 0, page.sheet().getLastRowNum());
  }

  /** Its area is a blank cell beside what is written; a sheet without an area is printed whole. */
  private static void printNothing(Page page) {
    XSSFWorkbook workbook = page.sheet().getWorkbook();
    int beside = page.lastColumn() + 2;
    workbook.setPrintArea(workbook.getSheetIndex(page.sheet()), beside, beside, 0, 0);
  }

  /**
   * Stays where it is while the rest goes by: on the sheet with the flag all down to it, on one
   * that is all table down to its head, else title, links and lead.
   */
  private static void keepHeadInSight(Page page, SheetPlaces places) {
    int last =
        flagRow(page, places)
            .or(() -> tableHead(page, places))
            .orElse(page.template().headRows() - 1);
    if (last >= 0) {
      page.sheet().createFreezePane(0, last + 1);
    }
  }

  private static Optional<Integer> flagRow(Page page, SheetPlaces places) {
    return places.entries(page.template()).stream()
        .filter(each -> each.entry() instanceof LineTemplate line && line.isVerdict())
        .map(SheetPlaces.Placed::row)
        .findFirst();
  }

  private static Optional<Integer> tableHead(Page page, SheetPlaces places) {
    return onlyTable(page, places)
        .filter(table -> isAllTable(page))
        .map(PrintSetup::lastHeadRow)
        .filter(last -> heightTo(page, last) <= MOST_FROZEN);
  }

  /** Only where one table is all the sheet is about can its head stand on every page. */
  private static void repeatHead(Page page, SheetPlaces places) {
    onlyTable(page, places)
        .filter(table -> !inputsBelow(page, places, table.row()))
        .ifPresent(
            table ->
                page.sheet()
                    .setRepeatingRows(
                        new CellRangeAddress(firstHeadRow(table), lastHeadRow(table), -1, -1)));
  }

  private static Optional<SheetPlaces.Placed> onlyTable(Page page, SheetPlaces places) {
    List<SheetPlaces.Placed> tables =
        places.entries(page.template()).stream().filter(each -> isTable(each.entry())).toList();
    return tables.size() == 1 ? Optional.of(tables.get(0)) : Optional.empty();
  }

  private static boolean inputsBelow(Page page, SheetPlaces places, int table) {
    return places.entries(page.template()).stream()
        .anyMatch(each -> each.entry() instanceof InputTemplate && each.row() > table);
  }

  private static boolean isTable(RowTemplate entry) {
    return entry instanceof TableTemplate || entry instanceof RowTemplate.Glossary;
  }

  private static int firstHeadRow(SheetPlaces.Placed placed) {
    return placed.entry() instanceof TableTemplate table
        ? SheetPlaces.headRow(table, placed.row())
        : placed.row();
  }

  private static int lastHeadRow(SheetPlaces.Placed placed) {
    return placed.entry() instanceof TableTemplate table
        ? SheetPlaces.dataRow(table, placed.row()) - 1
        : placed.row();
  }

  private static boolean isAllTable(Page page) {
    return page.template().rows(InputTemplate.class).isEmpty()
        && page.template().rows(LineTemplate.class).isEmpty();
  }

  private static double heightTo(Page page, int last) {
    double height = 0;
    for (int row = 0; row <= last; row++) {
      height += page.sheet().getRow(row) == null ? 0 : page.sheet().getRow(row).getHeightInPoints();
    }
    return height;
  }

  /** Keeps formulas from being typed over by accident; there is no password. */
  private static void protect(XSSFSheet sheet) {
    sheet.enableLocking();
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
  }
}
