package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.List;

/** Whether rows fit their sheet and the checks stand together. */
public final class SheetCheck {
  /** Label, value, unit, other unit, note. */
  private static final int LINE_COLUMNS = 5;

  /** Label, fault, sentence. */
  private static final int CHECK_COLUMNS = 3;

  private final Mistakes mistakes;

  private SheetCheck(Mistakes mistakes) {
    this.mistakes = mistakes;
  }

  static void check(WorkbookTemplate template, Mistakes mistakes) {
    SheetCheck check = new SheetCheck(mistakes);
    template.sheets().forEach(check::widths);
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
    for (RowTemplate row : sheet.rows()) {
      int needed = columns(row);
      if (needed > sheet.widths().size()) {
        mistakes.add(
            row.position(),
            "a row of " + needed + " columns on a sheet of " + sheet.widths().size(),
            "a width for every column",
            "add to widths of sheet " + sheet.name());
      }
    }
  }

  private static int columns(RowTemplate row) {
    if (row instanceof TableTemplate table) {
      return table.columns().size();
    } else if (isCheck(row)) {
      return CHECK_COLUMNS;
    } else if (row instanceof InputTemplate
        || row instanceof LineTemplate
        || row instanceof RowTemplate.Glossary) {
      return LINE_COLUMNS;
    }
    return 1;
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
