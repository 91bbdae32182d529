package frillbook.reading;

import frillbook.template.CellRow;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.TableTemplate;
import java.util.ArrayList;
import java.util.List;

/** How many columns a sheet has, and how wide they are. */
final class SheetColumns {
  /** Label, value, unit, other unit, note. */
  private static final int OF_A_LINE = 5;

  /** Label, fault, sentence. */
  private static final int OF_A_CHECK = 3;

  /** In characters, of a column whose width is not written: room for a label in two lines. */
  static final double USUAL_WIDTH = 12;

  private SheetColumns() {}

  /** The widths as written, and the usual one for each further column that {@code rows} need. */
  static List<Double> widths(List<Double> written, List<RowTemplate> rows) {
    List<Double> widths = new ArrayList<>(written);
    int needed = needed(rows);
    while (widths.size() < needed) {
      widths.add(USUAL_WIDTH);
    }
    return widths;
  }

  private static int needed(List<RowTemplate> rows) {
    int needed = 1;
    int before = 0;
    for (RowTemplate row : rows) {
      if (row instanceof RowTemplate.Beside beside) {
        before = beside.column();
      } else if (row instanceof RowTemplate.Below) {
        before = 0;
      }
      needed = Math.max(needed, before + of(row));
    }
    return needed;
  }

  private static int of(RowTemplate row) {
    if (row instanceof TableTemplate table) {
      return table.width();
    } else if (row instanceof RowTemplate.Excerpt excerpt) {
      return excerpt.columns().size();
    } else if (row instanceof CellRow cells) {
      return cells.cells().stream().mapToInt(CellRow.Cell::to).max().orElse(0) + 1;
    } else if (row instanceof CheckTemplate || row instanceof RowTemplate.InputChecks) {
      return OF_A_CHECK;
    } else if (row instanceof InputTemplate
        || row instanceof LineTemplate
        || row instanceof RowTemplate.Quote
        || row instanceof RowTemplate.Said
        || row instanceof RowTemplate.Glossary) {
      return OF_A_LINE;
    }
    return 1;
  }
}
