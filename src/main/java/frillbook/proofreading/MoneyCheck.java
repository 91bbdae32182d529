package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.template.UnitText;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.Wording;

/** Whether a template that shows money says which, and how many places it has. */
public final class MoneyCheck {
  private final Declarations declarations;
  private final Mistakes mistakes;

  private MoneyCheck(Declarations declarations, Mistakes mistakes) {
    this.declarations = declarations;
    this.mistakes = mistakes;
  }

  static void check(WorkbookTemplate template, Declarations declarations, Mistakes mistakes) {
    MoneyCheck check = new MoneyCheck(declarations, mistakes);
    template.inputs().forEach(input -> check.unit(input.unit(), input.position()));
    template.lines().forEach(line -> check.value(line.unit(), line.format(), line.position()));
    template.tables().stream()
        .flatMap(table -> table.columns().stream())
        .forEach(column -> check.value(column.unit(), column.format(), column.position()));
  }

  private void value(String unit, ValueFormat format, Position at) {
    unit(unit, at);
    boolean places = declarations.is(Wording.MONEY_PLACES, Declarations.Kind.LINE);
    if (format == ValueFormat.MONEY && !places) {
      mistakes.add(
          at,
          "format: money in a workbook without a line " + Wording.MONEY_PLACES,
          "a line of that name, the places of the currency",
          "add it or choose another format");
    }
  }

  private void unit(String unit, Position at) {
    if (UnitText.isMoney(unit) && !declarations.is(UnitText.CURRENCY, Declarations.Kind.INPUT)) {
      mistakes.add(
          at,
          "the unit " + unit + " in a workbook without an input " + UnitText.CURRENCY,
          "an input of that name, of kind currency",
          "add it or write another unit");
    }
  }
}
