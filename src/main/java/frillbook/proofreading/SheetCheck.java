package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.stream.Stream;

/** Whether rows fit their sheet and the checks stand together. */
public final class SheetCheck {
  /** Nearly twenty times as many as the built-in templates have. */
  private static final int MOST_CELLS = 250_000;

  private static final int MOST_COLUMNS = 250;

  private final Mistakes mistakes;

  private SheetCheck(Mistakes mistakes) {
    this.mistakes = mistakes;
  }

  static void check(WorkbookTemplate template, Mistakes mistakes) {
    SheetCheck check = new SheetCheck(mistakes);
    template.sheets().forEach(check::widths);
    template.sheets().forEach(check::linksInALine);
    check.links(template);
    check.quotes(template);
    template.rows(RowTemplate.Excerpt.class).forEach(excerpt -> check.excerpt(template, excerpt));
    template.rows(RowTemplate.Excerpt.class).forEach(excerpt -> check.closeUp(template, excerpt));
    check.sizes(template);
    check.checksTogether(template);
    check.inputChecksOnce(template);
  }

  private void widths(SheetTemplate sheet) {
    sheet.widths().stream()
        .filter(width -> width <= 0 || width > 255)
        .forEach(
            width ->
                mistakes.add(
                    sheet.position(),
                    "a column width of " + width,
                    "widths above 0 and up to 255",
                    "correct widths"));
  }

  /** Tells of links to sheets that are not there. */
  private void links(WorkbookTemplate template) {
    List<String> names = template.sheets().stream().map(SheetTemplate::name).toList();
    template.sheets().stream()
        .flatMap(sheet -> sheet.links().stream())
        .filter(link -> !names.contains(link.value()))
        .forEach(
            link ->
                mistakes.add(
                    link.position(),
                    "a link to the sheet " + link + ", which is not there",
                    "the name of a sheet",
                    "correct it or leave it out" + Nearest.hint(link.value(), names)));
  }

  /** Tells of links that the one line under the title has no columns for. */
  private void linksInALine(SheetTemplate sheet) {
    int room = sheet.linksInALine();
    if (sheet.besideColumn().isEmpty() && sheet.links().size() > room) {
      mistakes.add(
          sheet.links().get(room).position(),
          sheet.links().size() + " links",
          "at most " + room + ", one in each column " + SheetTemplate.LINK_WIDTH + " wide or more",
          "leave some out, or make columns wider");
    }
  }

  /** Tells of quotes of what is no line. */
  private void quotes(WorkbookTemplate template) {
    List<String> names = template.lines().stream().map(LineTemplate::name).toList();
    template.rows(RowTemplate.Quote.class).stream()
        .filter(quote -> !names.contains(quote.name().toString()))
        .forEach(
            quote ->
                mistakes.add(
                    quote.name().position(),
                    "the quoted " + quote.name() + ", which is not a line",
                    "the name of a line",
                    "correct it" + Nearest.hint(quote.name().toString(), names)));
  }

  /** Tells of a part of what is no table. */
  private void excerpt(WorkbookTemplate template, RowTemplate.Excerpt excerpt) {
    List<String> columns =
        template.tables().stream()
            .filter(table -> table.name().equals(excerpt.table().value()))
            .flatMap(table -> table.columns().stream())
            .map(ColumnTemplate::name)
            .toList();
    Stream.concat(excerpt.columns().stream(), excerpt.closeUp().stream())
        .filter(column -> !columns.contains(column.value()))
        .forEach(
            column ->
                mistakes.add(
                    column.position(),
                    "the column " + column + ", which the table " + excerpt.table() + " has not",
                    "columns of a table",
                    "correct the one or the other" + Nearest.hint(column.value(), columns)));
  }

  /** Tells of a column that cannot say which rows are shown. */
  private void closeUp(WorkbookTemplate template, RowTemplate.Excerpt excerpt) {
    List<String> others =
        template.tables().stream()
            .flatMap(table -> table.columns().stream())
            .filter(column -> column.format() != ValueFormat.COUNT)
            .map(ColumnTemplate::name)
            .toList();
    excerpt
        .closeUp()
        .filter(name -> others.contains(name.value()))
        .ifPresent(
            name ->
                mistakes.add(
                    name.position(),
                    "close_up: " + name,
                    "a column of format count, which counts the rows to show",
                    "name one, or leave close_up out to show all"));
  }

  /** Tells of the table that makes the workbook larger than a person's machine can calculate. */
  private void sizes(WorkbookTemplate template) {
    long before = 0;
    for (TableTemplate table : template.tables()) {
      long after = before + (long) table.rows() * table.columns().size();
      if (table.columns().size() > MOST_COLUMNS) {
        tellSize(table, table.columns().size() + " columns", MOST_COLUMNS);
      } else if (before <= MOST_CELLS && after > MOST_CELLS) {
        tellSize(table, after + " cells in tables so far", MOST_CELLS);
      }
      before = after;
    }
  }

  private void tellSize(TableTemplate table, String found, int most) {
    mistakes.add(
        table.position(),
        "table " + table.name() + ": " + found,
        "at most " + most,
        "give tables fewer rows or columns");
  }

  private static boolean isCheck(RowTemplate row) {
    return row instanceof CheckTemplate || row instanceof RowTemplate.InputChecks;
  }

  /** All checks are one range of cells, so nothing may stand between them. */
  private void checksTogether(WorkbookTemplate template) {
    boolean begun = false;
    boolean broken = false;
    for (SheetTemplate sheet : template.sheets()) {
      for (RowTemplate row : sheet.rows()) {
        if (isCheck(row) && begun && broken) {
          mistakes.add(
              row.position(),
              "a check apart from the others",
              "all checks one below the other on one sheet",
              "move it to the others");
        }
        broken = isCheck(row) ? false : begun;
        begun = begun || isCheck(row);
      }
      broken = begun;
    }
  }

  private void inputChecksOnce(WorkbookTemplate template) {
    List<RowTemplate.InputChecks> rows = template.rows(RowTemplate.InputChecks.class);
    rows.stream()
        .skip(1)
        .forEach(
            row ->
                mistakes.add(
                    row.position(),
                    "input_checks a second time",
                    "it once in the workbook",
                    "take one of the two out"));
  }
}
