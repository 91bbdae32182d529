package frillbook.press;

import frillbook.measure.Customary;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.wording.Sentence;
import frillbook.wording.Wording;
import java.util.List;
import java.util.Optional;

/** What the value of a calculated cell is. */
public sealed interface CellSource {
  /** The name its value has in the workbook; empty for one without a name. */
  default Optional<String> name() {
    return Optional.empty();
  }

  /** The value of a line. */
  record Line(String line) implements CellSource {
    @Override
    public Optional<String> name() {
      return Optional.of(line);
    }
  }

  /** That of a line, a length, in the other unit. */
  record OtherUnit(String line) implements CellSource {}

  /** A length in its long unit, or in the other unit where it is shorter than that. */
  record LongUnit(Wording.Measure measure) implements CellSource {}

  /** That of a line or an input, in the unit shown beside inches. */
  record Converted(String of, Customary unit) implements CellSource {}

  /**
   * A cell of a table.
   *
   * @param row from 0
   */
  record Entry(String column, int row) implements CellSource {
    @Override
    public Optional<String> name() {
      return Optional.of(column);
    }
  }

  /**
   * A cell of a table that stands elsewhere.
   *
   * @param row from 0; of the rows that {@code closeUp} counts, where it names a column
   * @param closeUp empty to show all rows
   */
  record Excerpt(String column, int row, String closeUp) implements CellSource {}

  /** 0 where a check holds, else the code of its level. */
  record Fault(Form.Check check) implements CellSource {
    @Override
    public Optional<String> name() {
      return Optional.of(check.name());
    }
  }

  /**
   * What the check says.
   *
   * @param place the cell to change, said behind it where it fails
   */
  record FaultSentence(Form.Check check, String place) implements CellSource {}

  /** 0 where an input can be used. */
  record InputFault(InputTemplate input) implements CellSource {}

  /**
   * What may be typed into an input that cannot be used.
   *
   * @param good stands there while it can be
   * @param place of the input, said behind it; nothing beside the input itself
   */
  record Remark(InputTemplate input, String good, String place) implements CellSource {}

  /** A sentence that follows the plan. */
  record Said(Sentence sentence) implements CellSource {}

  /** What the first failing check says, one that stops before others, and how many fail. */
  record FirstVerdict(List<FaultSentence> checks) implements CellSource {
    public FirstVerdict {
      checks = List.copyOf(checks);
    }
  }

  /**
   * What the failing checks say while one of them stops, those that stop first.
   *
   * @param rank from 1; one more than there are sentences says how many more fail
   * @param checks all but those of inputs
   */
  record Verdict(int rank, List<FaultSentence> checks) implements CellSource {
    public Verdict {
      checks = List.copyOf(checks);
    }
  }

  /**
   * Level and place of the failing check of that rank, as 1000 × the one and the other; 0 for none.
   *
   * @param before checks of inputs that stand before the others
   */
  record Failing(int rank, List<FaultSentence> checks, int before) implements CellSource {
    /** More than a workbook has checks. */
    public static final int LEVEL = 1000;

    public Failing {
      checks = List.copyOf(checks);
    }
  }

  /** A length or a weight in the smallest parts that are said of it. */
  record Parts(Wording.Measure measure) implements CellSource {}
}
