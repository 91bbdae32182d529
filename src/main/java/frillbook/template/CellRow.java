package frillbook.template;

import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A row of cells, each in the columns and with the look that the template says.
 *
 * @param cells from left to right
 * @param height of the row, in points; what its text needs where it is empty
 */
public record CellRow(List<Cell> cells, OptionalDouble height, Position position)
    implements RowTemplate {
  public CellRow {
    cells = List.copyOf(cells);
  }

  /** What a cell is for, and so how it looks. */
  public enum Kind {
    /** To be ticked when the step is done. */
    TICK,
    /** The number of the step, counted down the sheet. */
    NUMBER,
    STEP,
    /** The one number of a step that is looked for while working. */
    FIGURE,
    /** To be filled with what was measured. */
    MEASURED,
    PLAIN,
    /** A rule to work by. */
    MAXIM,
    COVER,
    SUBTITLE,
    MAKER,
    DATE,
    CONTACT,
    FACT_LABEL,
    FACT,
    CARD_TOP,
    CARD_NAME,
    CARD_WORDS,
    CARD_PRICE,
    CARD_LINE,
    CARD_END,
    SMALL_HEAD,
    SMALL,
    SIGNATURE,
    SIGN_LABEL
  }

  /**
   * One of them.
   *
   * @param from its first column, from 0
   * @param to its last column
   * @param said what stands in it; nothing in one that is filled by hand
   * @param ruled the input or line that must be above 0 for its rules to be drawn; empty for always
   */
  public record Cell(
      int from, int to, Kind kind, Optional<SentenceTemplate> said, Optional<SourceText> ruled) {}

  @Override
  public Stream<RowTemplate> withCells() {
    return Stream.concat(Stream.of(this), cells.stream().flatMap(cell -> cell.said().stream()));
  }
}
