package frillbook.template;

import frillbook.source.Position;
import java.util.List;
import java.util.Optional;

/**
 * One sheet.
 *
 * @param name on the sheet's tab
 * @param title in large letters in its first row
 * @param lead a sentence under the title, if any
 * @param widths of the columns, in digits of the workbook's font
 * @param rows from top to bottom, repeated rows written out
 * @param plan whether the sheet is part of a printed plan, not only of the workbook
 * @param onePage whether it is printed on one page, however small
 * @param printed whether it is printed; the background is only looked at
 * @param listed whether its names are told: in the glossary, or beside lines of the background
 * @param client whether the sheet is the page a client is given
 */
public record SheetTemplate(
    String name,
    String title,
    Optional<String> lead,
    Orientation orientation,
    List<Double> widths,
    List<RowTemplate> rows,
    boolean plan,
    boolean onePage,
    boolean printed,
    boolean listed,
    boolean client,
    Position position) {
  public SheetTemplate {
    widths = List.copyOf(widths);
    rows = List.copyOf(rows);
  }

  /** Whether a maker reads it; others are for those who check the workbook. */
  public boolean isRead() {
    return plan || printed;
  }

  /** The entries of one kind, from top to bottom. */
  public <T extends RowTemplate> List<T> rows(Class<T> kind) {
    return rows.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
