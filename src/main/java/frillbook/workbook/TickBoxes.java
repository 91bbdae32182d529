package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.template.Phrase;
import frillbook.template.TableTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidation;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidations;

/** Cells to be ticked, on the screen or on paper. */
final class TickBoxes {
  private final Page page;

  TickBoxes(Page page) {
    this.page = page;
  }

  /**
   * A list offers the mark: one rule for all ticks of a sheet. Another mark may be typed instead.
   *
   * @param columns from the first of the page's
   */
  void offer(int row, int lastRow, int column, int lastColumn) {
    String ticked = FormulaTranslation.text(page.phrases().say(Phrase.TICKED));
    CellRangeAddress cells = cells(row, lastRow, column, lastColumn);
    CTDataValidations rules = page.sheet().getCTWorksheet().getDataValidations();
    Optional<CTDataValidation> same =
        rules == null
            ? Optional.empty()
            : rules.getDataValidationList().stream()
                .filter(rule -> ticked.equals(rule.getFormula1()))
                .findFirst();
    same.ifPresentOrElse(rule -> widen(rule, cells), () -> offer(cells, ticked));
  }

  private static void widen(CTDataValidation rule, CellRangeAddress more) {
    List<String> cells = new ArrayList<>();
    for (Object other : rule.getSqref()) {
      cells.add((String) other);
    }
    cells.add(more.formatAsString());
    rule.setSqref(cells);
  }

  private void offer(CellRangeAddress cells, String ticked) {
    DataValidationHelper helper = page.sheet().getDataValidationHelper();
    DataValidation rule =
        helper.createValidation(
            helper.createFormulaListConstraint(ticked),
            new CellRangeAddressList(
                cells.getFirstRow(),
                cells.getLastRow(),
                cells.getFirstColumn(),
                cells.getLastColumn()));
    rule.setEmptyCellAllowed(true);
    rule.setSuppressDropDownArrow(true);
    page.sheet().addValidationData(rule);
  }

  /**
   * Boxes behind the columns of {@code table}. Framed are those in a row that is filled, as many as
   * are asked for.
   *
   * @param head row of the labels
   * @param blank condition that no row is filled
   */
  void beside(TableTemplate table, TableTemplate.Boxes boxes, int head, String blank) {
    int first = table.place(table.columns().size());
    int last = first + boxes.most() - 1;
    int data = head + SheetPlaces.TABLE_HEAD;
    int end = data + table.rows() - 1;
    head(boxes, head, first);
    XSSFCellStyle box = page.styles().unruled(Look.TICK);
    for (int row = data; row <= end; row++) {
      for (int column = first; column <= last; column++) {
        page.cell(row, column, box);
      }
    }
    offer(data, end, first, last);
    String number = new CellReference(data - 1, column(first), true, false).formatAsString();
    String unused = "SUM(" + boxes.count() + ")<" + number;
    String filled = new CellReference(data, column(0), false, true).formatAsString() + "<>\"\"";
    Emphasis emphasis = page.styles().emphasis();
    emphasis.addHead(
        page.sheet(),
        List.of(cells(data - 1, data - 1, first, last)),
        "OR(" + blank + "," + unused + ")");
    emphasis.addBoxes(page.sheet(), cells(data, end, first, last), filled + ",NOT(" + unused + ")");
  }

  private void head(TableTemplate.Boxes boxes, int head, int first) {
    int last = first + boxes.most() - 1;
    Styles styles = page.styles();
    String label = page.setting().say(boxes.label());
    page.text(
        head,
        first,
        label,
        styles.of(Look.HEADER, NumberFormats.GENERAL, HorizontalAlignment.LEFT));
    page.merge(head, first, last);
    page.fit(head, label, first, last, Look.HEADER);
    XSSFCellStyle number =
        styles.of(Look.HEADER_UNIT, NumberFormats.GENERAL, HorizontalAlignment.CENTER);
    for (int column = first; column <= last; column++) {
      page.cell(head + 1, column, number).setCellValue(column - first + 1);
    }
  }

  private int column(int column) {
    return page.firstColumn() + column;
  }

  private CellRangeAddress cells(int row, int lastRow, int column, int lastColumn) {
    return new CellRangeAddress(row, lastRow, column(column), column(lastColumn));
  }
}
