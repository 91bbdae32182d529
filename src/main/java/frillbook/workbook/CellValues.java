package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.brief.Units;
import frillbook.naming.NamedValues;
import frillbook.template.CheckLevel;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.PlanWords;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the engine says for every calculated cell of a workbook. */
public final class CellValues {
  private final WorkbookTemplate template;
  private final Units units;
  private final Map<String, Object> inputs;
  private final NamedValues plan;
  private final PlanWords words;

  /**
   * @param inputs every input by name, null for what was emptied and may be; each can be used
   * @param plan the values that follow from them
   */
  public CellValues(
      WorkbookTemplate template, Units units, Map<String, Object> inputs, NamedValues plan) {
    this.template = template;
    this.units = units;
    this.inputs = inputs;
    this.plan = plan;
    this.words = new PlanWords(template, units, inputs, plan);
  }

  /** A Double or a String; empty for what only these templates have. */
  public Optional<Object> value(CalculatedCell.Source source) {
    if (source instanceof CalculatedCell.Line line) {
      return line(line.line());
    } else if (source instanceof CalculatedCell.OtherUnit other) {
      return line(other.line()).map(this::inOtherUnit);
    } else if (source instanceof CalculatedCell.Entry entry) {
      return Optional.ofNullable(plan.columns().get(entry.column())).map(c -> at(c, entry.rowNo()));
    } else if (source instanceof CalculatedCell.Fault fault) {
      return Optional.of((double) fault(fault.check()));
    } else if (source instanceof CalculatedCell.FaultSentence sentence) {
      return Optional.of(sentence(sentence.check()));
    } else if (source instanceof CalculatedCell.InputFault fault) {
      return Optional.of(isUsable(fault.input()) ? 0.0 : 1.0);
    } else if (source instanceof CalculatedCell.Remark remark) {
      InputTemplate input = remark.input();
      String said = isUsable(input) ? remark.good() : input.refusal(units.length());
      return Optional.of(units.say(said));
    } else if (source instanceof CalculatedCell.Sentence sentence) {
      return Optional.of(words.sentence(sentence.sentence()));
    }
    return Optional.of(verdict());
  }

  private Optional<Object> line(LineTemplate line) {
    return line.text().isPresent()
        ? Optional.of(words.line(line))
        : Optional.ofNullable(plan.lines().get(line.name()));
  }

  private Object inOtherUnit(Object value) {
    LengthUnit unit = units.length();
    return value instanceof Double length ? (Object) unit.to(unit.other(), length) : value;
  }

  private static Object at(List<Object> column, int row) {
    return row < column.size() ? column.get(row) : NamedValues.NOTHING;
  }

  private boolean isUsable(InputTemplate input) {
    Object value = inputs.get(input.name());
    return value == null || input.accepts(value, units.length());
  }

  private int fault(CheckTemplate check) {
    boolean fine = !Double.valueOf(0).equals(plan.lines().get(check.name()));
    return fine || !words.holds(check.guard()) ? 0 : check.level().code();
  }

  private String sentence(CheckTemplate check) {
    if (fault(check) != 0) {
      return units.say(check.message());
    }
    return words.holds(check.guard()) ? FormulaTranslation.FINE : FormulaTranslation.NOT_CHECKED;
  }

  private String verdict() {
    return firstOf(CheckLevel.STOP)
        .or(() -> firstOf(CheckLevel.MIND))
        .orElse(FormulaTranslation.ALL_WELL);
  }

  private Optional<String> firstOf(CheckLevel level) {
    return template.checks().stream()
        .filter(check -> fault(check) == level.code())
        .map(this::sentence)
        .findFirst();
  }
}
