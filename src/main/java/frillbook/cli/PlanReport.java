package frillbook.cli;

import frillbook.brief.Brief;
import frillbook.brief.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.template.CheckLevel;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.PlanWords;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.UnitText;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.Wording;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The engine's plan in the words of the templates. */
record PlanReport(
    WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs, NamedValues values) {

  static PlanReport of(WorkbookTemplate template, LengthUnit unit, Map<String, Object> inputs) {
    NamedValues plan = NamedValues.of(Plan.of(brief(unit, inputs)));
    NamedValues values = PlanWords.complete(template, unit, inputs, plan);
    return new PlanReport(template, unit, inputs, values);
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

  /** A line's value; nothing for a line that only these templates have. */
  Object value(LineTemplate line) {
    return values.lines().getOrDefault(line.name(), NamedValues.NOTHING);
  }

  /** How many rows of a table the plan has. */
  int rows(TableTemplate table) {
    return table.columns().stream().mapToInt(column -> cells(column).size()).max().orElse(0);
  }

  /** A cell's value; nothing in a column that only these templates have. */
  Object value(ColumnTemplate column, int row) {
    List<Object> cells = cells(column);
    return row < cells.size() ? cells.get(row) : NamedValues.NOTHING;
  }

  /** Decimals of the currency; the usual two where only these templates leave it open. */
  int moneyPlaces() {
    return values.lines().get(Wording.MONEY_PLACES) instanceof Double places
        ? places.intValue()
        : 2;
  }

  private List<Object> cells(ColumnTemplate column) {
    return values.columns().getOrDefault(column.name(), List.of());
  }

  /** Whether the parts of the brief go together. */
  boolean isWorkable() {
    return failed().stream().noneMatch(check -> check.level() == CheckLevel.STOP);
  }

  /** One sentence for every check that does not hold. */
  List<String> problems() {
    return failed().stream().map(check -> inUnit(check.message())).toList();
  }

  private List<CheckTemplate> failed() {
    return template.checks().stream()
        .filter(check -> Double.valueOf(0).equals(values.lines().get(check.name())))
        .toList();
  }

  /** Where the workbook is and what it comes to. */
  String headline(Path written) {
    TextTable table = new TextTable("workbook", written.toString(), "", "");
    template.lines().stream().filter(LineTemplate::headline).forEach(line -> add(table, line));
    return table.text();
  }

  /** Lines and tables of every sheet that a maker reads, aligned. */
  String text() {
    return template.sheets().stream()
        .filter(SheetTemplate::plan)
        .map(this::sheetText)
        .collect(Collectors.joining(System.lineSeparator()));
  }

  private String sheetText(SheetTemplate sheet) {
    StringBuilder text = new StringBuilder(sheet.title()).append(System.lineSeparator());
    TextTable lines = new TextTable("", "", "", "");
    for (RowTemplate row : sheet.rows()) {
      if (row instanceof LineTemplate line) {
        add(lines, line);
      }
    }
    text.append(lines.text().stripLeading());
    sheet.rows(TableTemplate.class).stream()
        .filter(table -> !table.paper())
        .forEach(table -> text.append(tableText(table)));
    return text.toString();
  }

  private void add(TextTable table, LineTemplate line) {
    Object value = value(line);
    boolean also = line.also() && value instanceof Double;
    table.row(
        line.label(),
        Shown.value(value, line.format(), unit, moneyPlaces()),
        shownUnit(line.unit()),
        also ? "(" + other((Double) value) + ")" : "");
  }

  private String other(double length) {
    return Shown.fixed(unit.to(unit.other(), length), 1) + " " + unit.other().symbol();
  }

  private String tableText(TableTemplate table) {
    TextTable text = new TextTable(heads(table).toArray(String[]::new));
    for (int row = 0; row < rows(table); row++) {
      text.row(cells(table, row));
    }
    return System.lineSeparator() + text.text();
  }

  private List<String> heads(TableTemplate table) {
    return table.columns().stream().map(this::head).toList();
  }

  /** Counts say what they count in their label. */
  private String head(ColumnTemplate column) {
    String unit = column.format() == ValueFormat.COUNT ? "" : shownUnit(column.unit());
    return unit.isEmpty() ? column.label() : column.label() + ", " + unit;
  }

  private List<String> cells(TableTemplate table, int row) {
    List<String> cells = new ArrayList<>();
    for (ColumnTemplate column : table.columns()) {
      cells.add(Shown.value(value(column, row), column.format(), unit, moneyPlaces()));
    }
    return cells;
  }

  private String shownUnit(String written) {
    return UnitText.of(written).say(inputs::get, unit);
  }

  private String inUnit(String text) {
    return unit.say(text);
  }
}
