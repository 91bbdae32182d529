package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.template.ColumnTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import java.util.List;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Writes tables: labels, units, and formulas filled down. */
final class TableWriter {
  private static final double ROW_HEIGHT = 15.5;
  private static final double UNIT_HEIGHT = 14;

  private final Page page;
  private final FormulaTranslation formulas;
  private final TextWriter texts;

  TableWriter(Page page, FormulaTranslation formulas, TextWriter texts) {
    this.page = page;
    this.formulas = formulas;
    this.texts = texts;
  }

  void table(int row, TableTemplate table) {
    table.heading().ifPresent(heading -> texts.section(row, heading));
    int head = SheetPlaces.headRow(table, row);
    int data = SheetPlaces.dataRow(table, row);
    for (int column = 0; column < table.columns().size(); column++) {
      head(head, table.place(column), table.columns().get(column));
    }
    for (int number = 1; number <= table.rows(); number++) {
      fill(new FormulaTranslation.Row(table, number, data + number - 1, page.firstColumn()));
    }
    page.styles().rowPlaces().set(page, table.columns(), data, table.rows());
    String blank = blank(table, data);
    if (page.printed()) {
      page.styles().emphasis().addHead(page.sheet(), above(table, row, data - 1), blank);
    }
    table.boxes().ifPresent(boxes -> new TickBoxes(page).beside(table, boxes, head, blank));
  }

  /** The cells of a table above its data, but for the numbers of boxes. */
  private List<CellRangeAddress> above(TableTemplate table, int row, int units) {
    int left = page.firstColumn();
    int last = left + page.lastColumn();
    int boxes = left + table.place(table.columns().size());
    return table.boxes().isEmpty()
        ? List.of(new CellRangeAddress(row, units, left, last))
        : List.of(
            new CellRangeAddress(row, units - 1, left, last),
            new CellRangeAddress(units, units, left, boxes - 1));
  }

  /** Whether no row is filled; of a table filled down, the first is if any is. */
  private String blank(TableTemplate table, int data) {
    boolean anyRow = table.show().isPresent() && !table.named().isEmpty();
    int last = data + table.rows();
    String column = "$" + CellReference.convertNumToColString(page.firstColumn()) + "$";
    String first = column + (data + 1);
    return anyRow
        ? "COUNTIF(" + first + ":" + column + last + ",\"\")=" + table.rows()
        : first + "=\"\"";
  }

  /** Columns of {@code table}, which stands elsewhere. */
  void excerpt(int row, TableTemplate table, RowTemplate.Excerpt excerpt) {
    List<ColumnTemplate> shown =
        excerpt.columns().stream().map(name -> table.column(name.value()).single()).toList();
    int data = row + SheetPlaces.TABLE_HEAD;
    for (int column = 0; column < shown.size(); column++) {
      head(row, column, shown.get(column));
      for (int number = 1; number <= table.rows(); number++) {
        String value = FormulaTranslation.excerpt(shown.get(column).name(), number, excerpt);
        page.formula(data + number - 1, column, value, style(Look.DATA, shown.get(column)));
      }
    }
    page.styles().rowPlaces().set(page, shown, data, table.rows());
  }

  private void head(int row, int column, ColumnTemplate template) {
    String label = page.setting().say(template.label());
    page.text(row, column, label, style(Look.HEADER, template));
    int last = column + template.span() - 1;
    page.fit(row, label, column, last, Look.HEADER);
    String unit = template.format() == ValueFormat.PERCENT ? "-" : template.unit();
    page.unit(row + 1, column, unit, style(Look.HEADER_UNIT, template));
    page.heighten(row + 1, UNIT_HEIGHT);
    page.merge(row, column, last);
    page.merge(row + 1, column, last);
  }

  private void fill(FormulaTranslation.Row row) {
    TableTemplate table = row.table();
    for (int column = 0; column < table.columns().size(); column++) {
      ColumnTemplate of = table.columns().get(column);
      int place = table.place(column);
      page.formula(row.sheetRow(), place, formulas.cell(row, column), style(look(of), of));
      page.merge(row.sheetRow(), place, place + of.span() - 1);
    }
    page.heighten(row.sheetRow(), table.rowHeight().orElse(ROW_HEIGHT));
  }

  private static Look look(ColumnTemplate column) {
    return switch (column.size()) {
      case USUAL -> Look.DATA;
      case LARGE -> Look.LARGE_DATA;
      case LARGEST -> Look.LARGEST_DATA;
    };
  }

  /** Numbers and their headings stand to the right, words to the left. */
  private XSSFCellStyle style(Look look, ColumnTemplate column) {
    boolean isHead = look == Look.HEADER || look == Look.HEADER_UNIT;
    String format = isHead ? NumberFormats.GENERAL : format(column.format());
    HorizontalAlignment across =
        column.format().isWords() ? HorizontalAlignment.LEFT : HorizontalAlignment.RIGHT;
    return page.styles().of(look, format, across);
  }

  /** A column of per cent shows as many places in every row. */
  private String format(ValueFormat format) {
    return format == ValueFormat.PERCENT ? NumberFormats.BROKEN_PERCENT : page.format(format);
  }
}
