package frillbook.agreement;

import frillbook.naming.NamedValues;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;

/**
 * Compares every line, check and table cell of a template with the engine's value of that name.
 *
 * <p>A name that only one of the two has is a difference. A check's cell holds a fault where the
 * engine holds whether all is well. Rows of a table beyond the plan's must be blank.
 */
final class Comparison {
  /** Numbers a and b agree when they differ by no more than this × max(1, |a|, |b|). */
  static final double TOLERANCE = 1e-9;

  /**
   * What little is left of a long run after most of it has been taken away carries the rounding of
   * the long run: it may be off by this × the largest number of the plan. Apache POI multiplies and
   * divides numbers of fifteen digits, one or two fewer than Java and most spreadsheets have.
   */
  static final double REMAINDER = 1e-13;

  private static final Object NO_TWIN = "no record component of that name";

  private final TrialBrief brief;
  private final SheetValues sheet;
  private final NamedValues plan;
  private final double rounding;
  private final List<Difference> differences = new ArrayList<>();
  private long cells;
  private long remainders;
  private double largest;

  private Comparison(TrialBrief brief, SheetValues sheet) {
    this.brief = brief;
    this.sheet = sheet;
    this.plan = brief.planned();
    this.rounding = REMAINDER * largestNumber(plan);
  }

  private static double largestNumber(NamedValues plan) {
    return Stream.concat(
            plan.lines().values().stream(), plan.columns().values().stream().flatMap(List::stream))
        .filter(Double.class::isInstance)
        .map(Double.class::cast)
        .mapToDouble(Math::abs)
        .max()
        .orElse(0);
  }

  /** Compares a workbook that has been given the inputs of {@code brief}. */
  static Findings of(WorkbookTemplate template, TrialBrief brief, SheetValues sheet) {
    Comparison comparison = new Comparison(brief, sheet);
    comparison.compare(template);
    return comparison.findings();
  }

  private Findings findings() {
    return new Findings(1, cells, remainders, largest, List.copyOf(differences));
  }

  private void compare(WorkbookTemplate template) {
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    Map<String, List<Object>> columns = new LinkedHashMap<>(plan.columns());
    for (LineTemplate line : template.lines()) {
      line(line.name(), lines.remove(line.name()));
    }
    for (CheckTemplate check : template.checks()) {
      line(check.name(), fault(check, lines.remove(check.name())));
    }
    for (TableTemplate table : template.tables()) {
      for (ColumnTemplate column : table.columns()) {
        column(column.name(), columns.remove(column.name()));
      }
    }
    lines.forEach(this::withoutTemplate);
    columns.forEach(this::withoutTemplate);
  }

  /** 0 where all is well, else the level's code; no value at all stays none. */
  private static Object fault(CheckTemplate check, Object fine) {
    if (fine instanceof Double truth) {
      return truth == 1 ? 0.0 : (double) check.level().code();
    }
    return fine;
  }

  private void line(String name, Object engine) {
    column(name, engine == null ? null : List.of(engine));
  }

  /**
   * @param engine the plan's rows; null for a name the engine does not have
   */
  private void column(String name, List<Object> engine) {
    List<XSSFCell> column = sheet.cells(name);
    if (column.isEmpty()) {
      differences.add(Difference.withoutCell(brief, name, engine));
    } else if (engine == null) {
      XSSFCell first = column.get(0);
      differences.add(Difference.at(first, brief, name, NO_TWIN, sheet.value(first)));
    } else {
      rows(name, engine, column);
    }
  }

  private void rows(String name, List<Object> engine, List<XSSFCell> column) {
    for (int row = 0; row < column.size(); row++) {
      Object expected = row < engine.size() ? engine.get(row) : NamedValues.NOTHING;
      cell(name, expected, column.get(row));
    }
    for (int row = column.size(); row < engine.size(); row++) {
      String beyond = name + ", row " + (row + 1) + " of the plan";
      differences.add(Difference.withoutCell(brief, beyond, engine.get(row)));
    }
  }

  private void cell(String name, Object engine, XSSFCell cell) {
    cells++;
    Object value = sheet.value(cell);
    if (!agree(engine, value)) {
      differences.add(Difference.at(cell, brief, name, engine, value));
    }
  }

  private boolean agree(Object engine, Object value) {
    return engine instanceof Double a && value instanceof Double b
        ? agree(a.doubleValue(), b.doubleValue())
        : engine.equals(value);
  }

  private boolean agree(double engine, double value) {
    double apart = Math.abs(engine - value);
    double relative = apart / Math.max(1, Math.max(Math.abs(engine), Math.abs(value)));
    if (relative <= TOLERANCE) {
      largest = Math.max(largest, relative);
      return true;
    }
    remainders += apart <= rounding ? 1 : 0;
    return apart <= rounding;
  }

  private void withoutTemplate(String name, Object engine) {
    differences.add(Difference.withoutCell(brief, name, engine));
  }
}
