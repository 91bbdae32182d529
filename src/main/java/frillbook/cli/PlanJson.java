package frillbook.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import frillbook.naming.NamedValues;
import frillbook.template.ColumnTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.UnitText;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan as JSON, under the names of the workbook; what the plan has no value for is null. */
final class PlanJson {
  private static final JsonFactory JSON = new JsonFactory();

  private PlanJson() {}

  static String of(PlanSheets sheets) {
    PlanReport report = sheets.report();
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("unit", report.unit().symbol());
    plan.put("currency", report.inputs().get(UnitText.CURRENCY));
    plan.put("inputs", report.inputs());
    Map<String, Object> lines = new LinkedHashMap<>();
    sheets.template().lines().forEach(line -> lines.put(line.name(), value(sheets.value(line))));
    plan.put("lines", lines);
    Map<String, Object> tables = new LinkedHashMap<>();
    sheets.template().tables().forEach(table -> tables.put(table.name(), rows(sheets, table)));
    plan.put("tables", tables);
    return written(plan) + System.lineSeparator();
  }

  private static List<Map<String, Object>> rows(PlanSheets sheets, TableTemplate table) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int row = 0; row < sheets.rows(table); row++) {
      Map<String, Object> cells = new LinkedHashMap<>();
      for (ColumnTemplate column : table.columns()) {
        cells.put(column.name(), value(sheets.value(column, row)));
      }
      rows.add(cells);
    }
    return rows;
  }

  private static Object value(Object value) {
    return NamedValues.NOTHING.equals(value) ? null : value;
  }

  private static String written(Map<String, Object> plan) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text).useDefaultPrettyPrinter()) {
      write(json, plan);
    } catch (IOException e) {
      throw new IllegalStateException("the plan cannot be written as JSON", e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> named) {
      json.writeStartObject();
      for (Map.Entry<?, ?> each : named.entrySet()) {
        json.writeFieldName((String) each.getKey());
        write(json, each.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object each : list) {
        write(json, each);
      }
      json.writeEndArray();
    } else {
      json.writePOJO(value);
    }
  }
}
