package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One entry of a sheet, from top to bottom. */
public sealed interface RowTemplate
    permits RowTemplate.Section,
        RowTemplate.Note,
        RowTemplate.Caution,
        RowTemplate.InputChecks,
        RowTemplate.Glossary,
        RowTemplate.Verdict,
        RowTemplate.NewPage,
        RowTemplate.Said,
        RowTemplate.Quote,
        RowTemplate.Excerpt,
        RowTemplate.Beside,
        RowTemplate.Below,
        CellRow,
        InputTemplate,
        LineTemplate,
        SentenceTemplate,
        ChartTemplate,
        CheckTemplate,
        TableTemplate {
  /** Where the entry begins. */
  Position position();

  /** This entry, and those that stand in cells of its row. */
  default Stream<RowTemplate> withCells() {
    return Stream.of(this);
  }

  /** A heading over the rows that follow. */
  record Section(String text, Position position) implements RowTemplate {}

  /** A paragraph across the sheet. */
  record Note(String text, Position position) implements RowTemplate {}

  /** A paragraph that must not be missed. */
  record Caution(String text, Position position) implements RowTemplate {}

  /**
   * One check for each input of the whole workbook.
   *
   * @param parts of the work, in which order the inputs of each are checked
   */
  record InputChecks(List<String> parts, Position position) implements RowTemplate {
    public InputChecks {
      parts = List.copyOf(parts);
    }

    /** The name of the faults of one part's inputs. */
    public static String faults(String part) {
      return part + "_fault";
    }
  }

  /** What the checks say: the first sentences of those that stop, then of those to look at. */
  record Verdict(Position position) implements RowTemplate {
    /** Rows with a sentence; how many more there are stands in one below. */
    public static final int SENTENCES = 4;

    /** Rows for each, which may be two lines long. */
    public static final int ROWS_EACH = 2;

    /** Rows of all. */
    public static final int ROWS = SENTENCES * ROWS_EACH + 1;
  }

  /**
   * The value of a line that stands elsewhere.
   *
   * @param name of the line, as a formula
   * @param label beside it; that of the line where there is none
   * @param note beside it
   * @param headline whether it stands out
   */
  record Quote(
      FormulaText name, Optional<String> label, String note, boolean headline, Position position)
      implements RowTemplate {}

  /**
   * Columns of a table that stands elsewhere, with their heads.
   *
   * @param table its name
   * @param columns their names, from left to right
   * @param closeUp the column that counts the rows to show, each from the one it counts; empty to
   *     show all
   */
  record Excerpt(
      SourceText table, List<SourceText> columns, Optional<SourceText> closeUp, Position position)
      implements RowTemplate {
    public Excerpt {
      columns = List.copyOf(columns);
    }
  }

  /**
   * What follows, up to {@link Below}, stands from that column on, beside what follows then.
   *
   * @param column from 0
   */
  record Beside(int column, Position position) implements RowTemplate {}

  /** What follows stands in the first column again, in the row where {@link Beside} began. */
  record Below(Position position) implements RowTemplate {}

  /** A new printed page begins with the next row; no row of the sheet. */
  record NewPage(Position position) implements RowTemplate {}

  /** Every length and weight that sentences say, once, in words. */
  record Said(Position position) implements RowTemplate {}

  /** Every name of the workbook with label, unit, meaning and sheet. */
  record Glossary(Position position) implements RowTemplate {}
}
