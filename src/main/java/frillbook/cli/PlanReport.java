package frillbook.cli;

import frillbook.brief.Brief;
import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.measure.Tape;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.press.CellValues;
import frillbook.template.CheckLevel;
import frillbook.template.Form;
import frillbook.template.UnitText;
import frillbook.template.ValueFormat;
import frillbook.wording.PlanWords;
import frillbook.wording.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A plan in the words of the templates.
 *
 * @param inputs every input by name, a Double or a String
 * @param values of lines and tables; a check is 1 where all is well
 */
record PlanReport(Form form, LengthUnit unit, Map<String, Object> inputs, NamedValues values) {

  /** The engine's. */
  static PlanReport of(Form form, LengthUnit unit, Map<String, Object> inputs) {
    NamedValues plan = NamedValues.of(Plan.of(brief(unit, inputs)));
    return new PlanReport(
        form, unit, inputs, PlanWords.complete(form.vocabulary(), unit, inputs, plan));
  }

  /** Templates of a person's own may lack an input that the plan cannot do without. */
  private static Brief brief(LengthUnit unit, Map<String, Object> inputs) {
    try {
      return Brief.of(unit, inputs);
    } catch (IllegalArgumentException e) {
      throw new Refusal(
          Refusal.CANNOT,
          "These templates give no plan: the input " + e.getMessage() + ". Restore it.");
    }
  }

  /** The same for every calculated cell of a workbook. */
  CellValues cells() {
    return new CellValues(form, unit, inputs, values);
  }

  /** Whether the parts of the brief go together. */
  boolean isWorkable() {
    return failed().stream().noneMatch(check -> check.level() == CheckLevel.STOP);
  }

  /** One sentence for every check that does not hold. */
  List<String> problems() {
    PlanWords words = words();
    return failed().stream().map(check -> words.say(check.sentence())).toList();
  }

  private PlanWords words() {
    return new PlanWords(form.vocabulary(), unit, inputs, values);
  }

  /** As in the workbook, a check says nothing while what it speaks of is not known. */
  private List<Form.Check> failed() {
    PlanWords words = words();
    return form.checks().stream()
        .filter(check -> Double.valueOf(0).equals(values.lines().get(check.name())))
        .filter(check -> words.holds(check.guard()))
        .toList();
  }

  /** Where the workbook is and what it comes to. */
  String headline(Path written) {
    TextTable table = new TextTable("workbook", written.toString(), "", "");
    form.headlines().forEach(line -> add(table, line));
    return table.text();
  }

  /** Adds a line with its value, in both length units where it has them. */
  void add(TextTable table, Form.Headline line) {
    Object value =
        shown(line.name(), values.lines().getOrDefault(line.name(), NamedValues.NOTHING));
    String shown = Shown.value(value, format(line), unit, moneyPlaces());
    String of =
        UnitText.beside(line.name(), line.unit()).say(name -> value(line.name(), name), unit);
    if (!line.also() || !(value instanceof Double number)) {
      table.row(line.label(), shown, of, "");
    } else if (unit == LengthUnit.INCH && Customary.of(line.unit()).isPresent()) {
      Customary in = Customary.of(line.unit()).get();
      table.row(
          line.label(), Shown.fixed(in.of(number), 1), in.symbol(), "(" + shown + " " + of + ")");
    } else {
      table.row(line.label(), shown, of, "(" + beside(line, number) + ")");
    }
  }

  /** A shop cuts eighths of a yard. */
  private ValueFormat format(Form.Headline line) {
    boolean isYards = unit == LengthUnit.INCH && line.unit().equals("{long_unit}");
    return isYards ? ValueFormat.CUT : line.format();
  }

  private Object value(String line, String name) {
    return name.equals(line) ? values.lines().get(name) : inputs.get(name);
  }

  /** A value of that name in words where it is known by a code. */
  Object shown(String name, Object value) {
    return form.vocabulary().words().shown(name, value);
  }

  private String beside(Form.Headline line, double value) {
    LengthUnit other = unit.other();
    boolean isLong = line.format() == ValueFormat.LONG && unit.isLong(value);
    return Customary.of(line.unit())
        .map(in -> Shown.fixed(in.of(value), 1) + " " + in.symbol())
        .orElseGet(
            () ->
                isLong
                    ? Tape.sayLong(unit, value)
                    : Tape.say(other, unit.to(other, value)) + " " + other.symbol());
  }

  /** Decimals of the currency; the usual two where only these templates leave it open. */
  int moneyPlaces() {
    return values.lines().get(Wording.MONEY_PLACES) instanceof Double places
        ? places.intValue()
        : 2;
  }

  /** The words a template's unit stands for; nothing for {@code -}. */
  String shownUnit(String written) {
    return UnitText.of(written).say(inputs::get, unit);
  }
}
