package frillbook.reading;

import frillbook.source.SourceText;
import frillbook.template.CellRow;
import frillbook.template.SentenceTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads rows of cells, and the steps of work that are written as such a row. */
public final class CellRowReader {
  /** Columns of a step. */
  private static final int TICK = 0;

  private static final int NUMBER = 1;
  private static final int STEP = 2;
  private static final int FIGURE = 4;
  private static final int MEASURED = 5;

  private CellRowReader() {}

  static CellRow cells(Block block) {
    List<CellRow.Cell> cells = new ArrayList<>();
    block.items("cells").forEach(node -> cells.add(cell(new Block(node, block.scope(), "cell"))));
    double height = block.has("height") ? block.number("height") : 0;
    block.done();
    return new CellRow(cells, optional(height), block.position());
  }

  private static OptionalDouble optional(double height) {
    return height > 0 ? OptionalDouble.of(height) : OptionalDouble.empty();
  }

  private static CellRow.Cell cell(Block block) {
    int from = column(block, "at");
    int to = block.has("to") ? column(block, "to") : from;
    CellRow.Cell cell =
        new CellRow.Cell(
            from,
            to,
            block.word("look", CellRow.Kind.PLAIN),
            sentence(block, "say"),
            block.rawText("ruled"));
    block.done();
    return cell;
  }

  /**
   * A step of the work: a box to tick, its number, what to do, its figure, and room for what is
   * measured.
   */
  static CellRow step(Block block) {
    boolean measured = block.flag("measured");
    List<CellRow.Cell> cells = new ArrayList<>();
    cells.add(empty(TICK, CellRow.Kind.TICK));
    cells.add(empty(NUMBER, CellRow.Kind.NUMBER));
    Optional<SentenceTemplate> figure = sentence(block, "figure");
    int last = measured ? MEASURED - 1 : MEASURED;
    int end = figure.isPresent() ? FIGURE - 1 : last;
    cells.add(
        new CellRow.Cell(STEP, end, CellRow.Kind.STEP, sentence(block, "step"), Optional.empty()));
    if (figure.isPresent()) {
      cells.add(new CellRow.Cell(FIGURE, FIGURE, CellRow.Kind.FIGURE, figure, Optional.empty()));
    }
    if (figure.isPresent() && !measured) {
      cells.add(empty(MEASURED, CellRow.Kind.STEP));
    }
    if (measured) {
      cells.add(empty(MEASURED, CellRow.Kind.MEASURED));
    }
    block.done();
    return new CellRow(cells, OptionalDouble.empty(), block.position());
  }

  private static CellRow.Cell empty(int column, CellRow.Kind kind) {
    return new CellRow.Cell(column, column, kind, Optional.empty(), Optional.empty());
  }

  private static Optional<SentenceTemplate> sentence(Block block, String key) {
    if (!block.has(key)) {
      return Optional.empty();
    }
    return Optional.of(
        new SentenceTemplate(
            RowReader.wording(block, key), RowReader.guard(block, "none"), block.position()));
  }

  /** The column whose letter stands under {@code key}, from 0. */
  static int column(Block block, String key) {
    SourceText letter = block.requiredRawText(key);
    if (letter.value().matches("[A-Z]")) {
      return letter.value().charAt(0) - 'A';
    }
    block
        .scope()
        .tell(
            letter.position(),
            key + ": " + letter,
            "the letter of a column, A to Z",
            "write it as the sheet shows it");
    return 0;
  }
}
