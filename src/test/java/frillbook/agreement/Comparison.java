package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.press.CellSource;
import frillbook.press.CellValues;
import frillbook.pressing.CalculatedCell;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.PlanWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;

/**
 * Compares every line, check and table cell of a template with the engine's value of that name.
 *
 * <p>A name that only one of the two has is a difference. A check's cell holds a fault where the
 * engine holds whether all is well. Rows of a table beyond the plan's must be blank.
 */
final class Comparison {
  /** The cells without a name, by unit and template; they are the same for every brief. */
  private static final Map<LengthUnit, Map<WorkbookTemplate, List<CalculatedCell>>> UNNAMED =
      Map.of(
          LengthUnit.INCH, Collections.synchronizedMap(new IdentityHashMap<>()),
          LengthUnit.CM, Collections.synchronizedMap(new IdentityHashMap<>()));

  private static final Object NO_TWIN = "no record component of that name";

  private final TrialBrief brief;
  private final SheetValues sheet;
  private final NamedValues plan;
  private final CellValues values;
  private final Closeness closeness;
  private final List<Difference> differences = new ArrayList<>();

  private Comparison(WorkbookTemplate template, TrialBrief brief, SheetValues sheet) {
    this.brief = brief;
    this.sheet = sheet;
    Form form = Form.of(template);
    NamedValues known = brief.planned();
    NamedValues said = PlanWords.complete(form.vocabulary(), brief.unit(), brief.inputs(), known);
    this.plan = form.vocabulary().words().shown(said);
    this.values = new CellValues(form, brief.unit(), brief.inputs(), said);
    this.closeness = Closeness.within(plan);
  }

  /** Compares a workbook that has been given the inputs of {@code brief}. */
  static Findings of(WorkbookTemplate template, TrialBrief brief, SheetValues sheet) {
    Comparison comparison = new Comparison(template, brief, sheet);
    comparison.compare(template);
    return comparison.findings();
  }

  private Findings findings() {
    return closeness.findings(1, differences);
  }

  private void compare(WorkbookTemplate template) {
    Map<String, Object> lines = new LinkedHashMap<>(plan.lines());
    Map<String, List<Object>> columns = new LinkedHashMap<>(plan.columns());
    for (LineTemplate line : template.lines()) {
      lines.remove(line.name());
      line(line.name(), values.value(new CellSource.Line(line.name())).orElse(null));
    }
    for (CheckTemplate check : template.checks()) {
      Object known = lines.remove(check.name());
      Object fault = values.value(new CellSource.Fault(Form.Check.of(check))).orElseThrow();
      line(check.name(), known == null ? null : fault);
    }
    for (TableTemplate table : template.tables()) {
      for (ColumnTemplate column : table.columns()) {
        column(column.name(), columns.remove(column.name()));
      }
    }
    UNNAMED
        .get(brief.unit())
        .computeIfAbsent(template, each -> unnamed(each, brief.unit()))
        .forEach(this::withoutName);
    lines.forEach(this::withoutTemplate);
    columns.forEach(this::withoutTemplate);
  }

  /** Sentences, remarks and the like, which are found by their place. */
  private void withoutName(CalculatedCell calculated) {
    Object engine = values.value(calculated.source()).orElse(NO_TWIN);
    XSSFCell cell = sheet.cell(calculated.sheet(), calculated.row(), calculated.column());
    cell(calculated.source().getClass().getSimpleName(), engine, cell);
  }

  private static List<CalculatedCell> unnamed(WorkbookTemplate template, LengthUnit unit) {
    return CalculatedCell.all(template, unit).stream()
        .filter(cell -> cell.source().name().isEmpty())
        .toList();
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
    Object value = engine instanceof String text ? sheet.value(cell, text) : sheet.value(cell);
    if (!closeness.agree(engine, value)) {
      differences.add(Difference.at(cell, brief, name, engine, value));
    }
  }

  private void withoutTemplate(String name, Object engine) {
    differences.add(Difference.withoutCell(brief, name, engine));
  }
}
