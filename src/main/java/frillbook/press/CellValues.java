package frillbook.press;

import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.template.CheckLevel;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.Phrase;
import frillbook.template.RowTemplate;
import frillbook.wording.PlanWords;
import frillbook.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the engine says for every calculated cell of a workbook. */
public final class CellValues {
  private final Form form;
  private final LengthUnit unit;
  private final Map<String, Object> inputs;
  private final PlanWords words;

  /**
   * @param inputs every input by name, null for what was emptied and may be; each can be used
   * @param plan the values that follow from them
   */
  public CellValues(Form form, LengthUnit unit, Map<String, Object> inputs, NamedValues plan) {
    this.form = form;
    this.unit = unit;
    this.inputs = inputs;
    this.words = new PlanWords(form.vocabulary(), unit, inputs, plan);
  }

  /** A Double or a String; empty for what only templates of a person's own have. */
  public Optional<Object> value(CellSource source) {
    if (source instanceof CellSource.Entry entry) {
      return words.column(entry.column()).map(column -> at(column, entry.row()));
    } else if (source instanceof CellSource.Excerpt excerpt) {
      return words.column(excerpt.column()).map(column -> at(column, row(excerpt)));
    } else if (source instanceof CellSource.Line line) {
      return words.shown(line.line());
    } else if (source instanceof CellSource.OtherUnit other) {
      return words.value(other.line()).map(this::inOtherUnit);
    } else if (source instanceof CellSource.LongUnit length) {
      return words.value(length.measure().name()).map(value -> inLongUnit(length.measure(), value));
    } else if (source instanceof CellSource.Converted converted) {
      return words.value(converted.of()).map(value -> in(converted.unit(), value));
    } else if (source instanceof CellSource.Fault fault) {
      return Optional.of((double) fault(fault.check()));
    } else if (source instanceof CellSource.FaultSentence sentence) {
      return Optional.of(sentence(sentence));
    } else if (source instanceof CellSource.InputFault fault) {
      return Optional.of(isUsable(fault.input()) ? 0.0 : 1.0);
    } else if (source instanceof CellSource.Remark remark) {
      InputTemplate input = remark.input();
      String said = isUsable(input) ? remark.good() : refused(input, remark.place());
      return Optional.of(unit.say(said));
    } else if (source instanceof CellSource.Said said) {
      return Optional.of(words.say(said.sentence()));
    } else if (source instanceof CellSource.FirstVerdict first) {
      return Optional.of(first(first));
    } else if (source instanceof CellSource.Failing failing) {
      return Optional.of((double) failing(failing));
    }
    return source instanceof CellSource.Parts parts
        ? words.value(parts.measure().name()).map(value -> parts(parts.measure(), value))
        : Optional.of(verdict((CellSource.Verdict) source));
  }

  /** The first row that is counted as this one, beyond the table where none is. */
  private int row(CellSource.Excerpt excerpt) {
    if (excerpt.closeUp().isEmpty()) {
      return excerpt.row();
    }
    int counted =
        words.column(excerpt.closeUp()).map(count -> count.indexOf(excerpt.row() + 1.0)).orElse(-1);
    return counted < 0 ? Integer.MAX_VALUE : counted;
  }

  private String refused(InputTemplate input, String place) {
    String limits = input.limits(form.phrases(), unit);
    return place.isEmpty() ? limits : input.label() + " " + limits + place;
  }

  private Object parts(Wording.Measure measure, Object value) {
    return value instanceof Double number
        ? (Object) measure.style().parts(unit, number)
        : NamedValues.NOTHING;
  }

  private Object inOtherUnit(Object value) {
    return value instanceof Double length ? (Object) unit.to(unit.other(), length) : value;
  }

  private Object inLongUnit(Wording.Measure measure, Object value) {
    return value instanceof Double length && unit.isLong(length)
        ? words.say(measure.sentence())
        : inOtherUnit(value);
  }

  private static Object in(Customary unit, Object value) {
    return value instanceof Double amount ? (Object) unit.of(amount) : NamedValues.NOTHING;
  }

  private static Object at(List<Object> column, int row) {
    return row < column.size() ? column.get(row) : NamedValues.NOTHING;
  }

  private boolean isUsable(InputTemplate input) {
    Object value = inputs.get(input.name());
    return value == null || input.accepts(value, unit);
  }

  private int fault(Form.Check check) {
    boolean fine = !words.value(check.name()).equals(Optional.of(0.0));
    return fine || !words.holds(check.guard()) ? 0 : check.level().code();
  }

  private String sentence(CellSource.FaultSentence said) {
    Form.Check check = said.check();
    if (fault(check) != 0) {
      return words.say(check.sentence()) + said.place();
    }
    return form.phrases().say(words.holds(check.guard()) ? Phrase.FINE : Phrase.NOT_CHECKED);
  }

  private String first(CellSource.FirstVerdict verdict) {
    List<CellSource.FaultSentence> failing = failing(verdict.checks());
    if (failing.isEmpty()) {
      return form.phrases().say(Phrase.ALL_WELL);
    }
    String said = sentence(failing.get(0));
    return failing.size() == 1
        ? said
        : said + " " + form.phrases().say(Phrase.FIRST_OF, String.valueOf(failing.size()));
  }

  private String verdict(CellSource.Verdict verdict) {
    List<CellSource.FaultSentence> failing = listed(verdict.checks());
    int more = failing.size() - RowTemplate.Verdict.SENTENCES;
    if (verdict.rank() > RowTemplate.Verdict.SENTENCES) {
      return more > 0 ? form.phrases().say(Phrase.MORE, String.valueOf(more)) : "";
    }
    return verdict.rank() > failing.size() ? "" : sentence(failing.get(verdict.rank() - 1));
  }

  private int failing(CellSource.Failing failing) {
    List<CellSource.FaultSentence> failed = listed(failing.checks());
    if (failing.rank() > failed.size()) {
      return 0;
    }
    CellSource.FaultSentence said = failed.get(failing.rank() - 1);
    int place = failing.before() + failing.checks().indexOf(said) + 1;
    return CellSource.Failing.LEVEL * fault(said.check()) + place;
  }

  /** What is listed where the plan stops. */
  private List<CellSource.FaultSentence> listed(List<CellSource.FaultSentence> checks) {
    List<CellSource.FaultSentence> failing = failing(checks);
    boolean stops = !failing.isEmpty() && failing.get(0).check().level() == CheckLevel.STOP;
    return stops ? failing : List.of();
  }

  /** Those that fail, those that stop first. */
  private List<CellSource.FaultSentence> failing(List<CellSource.FaultSentence> checks) {
    return checks.stream()
        .filter(said -> fault(said.check()) != 0)
        .sorted(Comparator.comparingInt(said -> fault(said.check())))
        .toList();
  }
}
