package frillbook.press;

import frillbook.measure.Customary;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.wording.Sentence;
import frillbook.wording.Wording;
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

  /** 0 where a check holds, else the code of its level. */
  record Fault(Form.Check check) implements CellSource {
    @Override
    public Optional<String> name() {
      return Optional.of(check.name());
    }
  }

  /** What the check says. */
  record FaultSentence(Form.Check check) implements CellSource {}

  /** 0 where an input can be used. */
  record InputFault(InputTemplate input) implements CellSource {}

  /**
   * What may be typed into an input that cannot be used.
   *
   * @param good stands there while it can be
   */
  record Remark(InputTemplate input, String good) implements CellSource {}

  /** A sentence that follows the plan. */
  record Said(Sentence sentence) implements CellSource {}

  /** A length or a weight in the smallest parts that are said of it. */
  record Parts(Wording.Measure measure) implements CellSource {}

  /** What all checks say together. */
  record Verdict() implements CellSource {}
}
