package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.template.ChartTemplate;
import frillbook.template.SeriesTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether the series of charts have points to draw: pairs of whole columns. */
public final class ChartCheck {
  private final Map<String, TableTemplate> tables = new LinkedHashMap<>();
  private final Mistakes mistakes;

  private ChartCheck(WorkbookTemplate template, Mistakes mistakes) {
    this.mistakes = mistakes;
    template
        .tables()
        .forEach(table -> table.columns().forEach(each -> tables.put(each.name(), table)));
  }

  static void check(WorkbookTemplate template, Mistakes mistakes) {
    ChartCheck check = new ChartCheck(template, mistakes);
    template.rows(ChartTemplate.class).forEach(chart -> chart.series().forEach(check::series));
    template.rows(ChartTemplate.class).forEach(check::rounds);
  }

  private void series(SeriesTemplate series) {
    series.columns().filter(column -> !column.name().isEmpty()).forEach(this::column);
    TableTemplate across = series.x().map(x -> tables.get(x.name())).orElse(null);
    TableTemplate upwards = tables.get(series.y().name());
    if (across != null && upwards != null && across.rows() != upwards.rows()) {
      mistakes.add(
          series.y().position(),
          "a series of " + across.rows() + " rows across and " + upwards.rows() + " upwards",
          "two columns of one length",
          "take both from one table");
    }
  }

  /** Petals go round together, step by step, and none is turned past its rows. */
  private void rounds(ChartTemplate chart) {
    List<SeriesTemplate> petals =
        chart.series().stream()
            .filter(each -> each.petal().isPresent() && tables.containsKey(each.y().name()))
            .toList();
    for (SeriesTemplate each : petals) {
      int rows = tables.get(each.y().name()).rows();
      int first = tables.get(petals.get(0).y().name()).rows();
      if (rows != first) {
        mistakes.add(
            each.y().position(),
            "petals of " + rows + " rows beside others of " + first,
            "columns of one length",
            "take all from one table");
      } else if (each.turn() >= rows) {
        mistakes.add(
            each.position(),
            "petals of " + rows + " rows turned by " + each.turn(),
            "fewer",
            "correct turn or add rows");
      }
    }
  }

  private void column(SeriesTemplate.Column column) {
    TableTemplate table = tables.get(column.name());
    if (table == null) {
      mistakes.add(
          column.position(),
          "the unknown column " + column.name(),
          "the name of a table's column",
          "correct it or add the column" + Nearest.hint(column.name(), tables.keySet()));
    } else if (table.show().isPresent()) {
      mistakes.add(
          column.position(),
          "the column " + column.name() + ", which has blank rows",
          "a column of a table without show, as a blank cell is drawn as 0",
          "repeat the last point instead of leaving rows blank");
    }
  }
}
