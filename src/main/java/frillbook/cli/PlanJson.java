package frillbook.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import frillbook.naming.NamedValues;
import frillbook.template.ColumnTemplate;
import frillbook.template.TableTemplate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan as JSON, under the names of the workbook; what the plan has no value for is null. */
final class PlanJson {
  private static final JsonMapper MAPPER = new JsonMapper();

  private PlanJson() {}

  static String of(PlanReport report) {
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("unit", report.units().length().symbol());
    plan.put("currency", report.units().currency().getCurrencyCode());
    plan.put("inputs", report.inputs());
    Map<String, Object> lines = new LinkedHashMap<>();
    report
        .template()
        .lines()
        .forEach(line -> lines.put(line.name(), value(report.value(line.name()))));
    plan.put("lines", lines);
    Map<String, Object> tables = new LinkedHashMap<>();
    report.template().tables().forEach(table -> tables.put(table.name(), rows(report, table)));
    plan.put("tables", tables);
    return written(plan) + System.lineSeparator();
  }

  private static List<Map<String, Object>> rows(PlanReport report, TableTemplate table) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int row = 0; row < report.rows(table); row++) {
      Map<String, Object> cells = new LinkedHashMap<>();
      for (ColumnTemplate column : table.columns()) {
        cells.put(column.name(), value(report.value(column, row)));
      }
      rows.add(cells);
    }
    return rows;
  }

  private static Object value(Object value) {
    return NamedValues.NOTHING.equals(value) ? null : value;
  }

  private static String written(Map<String, Object> plan) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(plan);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the plan cannot be written as JSON", e);
    }
  }
}
