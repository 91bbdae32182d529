package frillbook.cli;

import frillbook.naming.NamedValues;
import frillbook.template.ColumnTemplate;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A whole plan, sheet by sheet, in the words of its templates. */
record PlanSheets(WorkbookTemplate template, PlanReport report) {

  /** A line's value; nothing where there is none. */
  Object value(LineTemplate line) {
    return report.values().lines().getOrDefault(line.name(), NamedValues.NOTHING);
  }

  /** How many rows of a table the plan has. */
  int rows(TableTemplate table) {
    return rows(table.columns());
  }

  private int rows(List<ColumnTemplate> columns) {
    return columns.stream().mapToInt(column -> cells(column).size()).max().orElse(0);
  }

  /** A cell's value; nothing where there is none. */
  Object value(ColumnTemplate column, int row) {
    List<Object> cells = cells(column);
    return row < cells.size() ? cells.get(row) : NamedValues.NOTHING;
  }

  private List<Object> cells(ColumnTemplate column) {
    return report.values().columns().getOrDefault(column.name(), List.of());
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
        report.add(lines, Form.Headline.of(line));
      }
    }
    text.append(lines.text().stripLeading());
    sheet.rows(TableTemplate.class).stream()
        .filter(table -> !table.paper())
        .forEach(table -> text.append(tableText(table.columns())));
    sheet.rows(RowTemplate.Excerpt.class).stream()
        .filter(excerpt -> excerpt.closeUp().isEmpty())
        .forEach(excerpt -> text.append(tableText(columns(excerpt))));
    return text.toString();
  }

  private List<ColumnTemplate> columns(RowTemplate.Excerpt excerpt) {
    TableTemplate table = template.table(excerpt);
    return excerpt.columns().stream().map(name -> table.column(name.value())).toList();
  }

  private String tableText(List<ColumnTemplate> columns) {
    TextTable text = new TextTable(columns.stream().map(this::head).toArray(String[]::new));
    for (int row = 0; row < rows(columns); row++) {
      text.row(cells(columns, row));
    }
    return System.lineSeparator() + text.text();
  }

  /** Counts say what they count in their label. */
  private String head(ColumnTemplate column) {
    String unit = column.format() == ValueFormat.COUNT ? "" : report.shownUnit(column.unit());
    String label = report.unit().say(column.label());
    return unit.isEmpty() ? label : label + ", " + unit;
  }

  private List<String> cells(List<ColumnTemplate> columns, int row) {
    List<String> cells = new ArrayList<>();
    for (ColumnTemplate column : columns) {
      cells.add(
          Shown.value(
              report.shown(column.name(), value(column, row)),
              column.format(),
              report.unit(),
              report.moneyPlaces()));
    }
    return cells;
  }
}
