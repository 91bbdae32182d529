package frillbook.template;

import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One sheet.
 *
 * @param name on the sheet's tab
 * @param title in large letters in its first row; empty on a client's page, which begins itself
 * @param lead a sentence under the title, if any
 * @param widths of the columns, in digits of the workbook's font
 * @param rows from top to bottom, repeated rows written out
 * @param plan whether the sheet is part of a printed plan, not only of the workbook
 * @param pages how many it is made small enough to be printed on; 0 for as many as it takes
 * @param printed whether it is printed; the background is only looked at
 * @param listed whether its names are told: in the glossary, or beside lines of the background
 * @param client whether the sheet is the page a client is given
 * @param links sheets that a line under the title leads to; beside it, where other columns begin
 * @param tab what it is for, and so the colour of its tab
 */
public record SheetTemplate(
    String name,
    String title,
    Optional<String> lead,
    Orientation orientation,
    List<Double> widths,
    List<RowTemplate> rows,
    boolean plan,
    int pages,
    boolean printed,
    boolean listed,
    boolean client,
    List<SourceText> links,
    Tab tab,
    Position position) {
  /** Least width of a column with a link in it, in digits. */
  public static final double LINK_WIDTH = 8;

  /** What a sheet is for. */
  public enum Tab {
    INPUT,
    WORK,
    CLIENT,
    BACKGROUND
  }

  public SheetTemplate {
    widths = List.copyOf(widths);
    rows = List.copyOf(rows);
    links = List.copyOf(links);
  }

  /** Whether a maker reads it; others are for those who check the workbook. */
  public boolean isRead() {
    return plan || printed;
  }

  /** Where columns begin that stand beside the first ones; empty where none do. */
  public OptionalInt besideColumn() {
    return rows(RowTemplate.Beside.class).stream().mapToInt(RowTemplate.Beside::column).min();
  }

  /** How many links find room in the line under the title. */
  public int linksInALine() {
    return (int) widths.stream().filter(width -> width >= LINK_WIDTH).count();
  }

  /** Rows of title, links and lead. */
  public int headRows() {
    if (title.isEmpty()) {
      return 0;
    }
    boolean under = !links.isEmpty() && besideColumn().isEmpty();
    return 1 + (under ? 1 : 0) + (lead.isPresent() ? 1 : 0);
  }

  /** The entries of one kind, from top to bottom. */
  public <T extends RowTemplate> List<T> rows(Class<T> kind) {
    return rows.stream()
        .flatMap(RowTemplate::withCells)
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }
}
