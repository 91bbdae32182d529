package frillbook.pressing;

import frillbook.calculation.CellError;
import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.naming.NamedValues;
import frillbook.press.CellSource;
import frillbook.press.CellValues;
import frillbook.press.Press;
import frillbook.template.Form;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook whose formulas have been calculated, and whether it says what the engine says. */
public final class CalculatedWorkbook {
  /** Numbers a and b are the same when they differ by no more than this × max(1, |a|, |b|). */
  private static final double SAME = 1e-9;

  private static final int SHOWN = 20;

  private final WorkbookTemplate template;
  private final WorkbookSetting setting;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final WorkbookValues values;
  private final List<CalculatedCell> cells;

  private CalculatedWorkbook(WorkbookTemplate template, WorkbookSetting setting) {
    this.template = template;
    this.setting = setting;
    new WorkbookCompiler().compileInto(workbook, template, setting);
    this.values = new WorkbookValues(workbook);
    this.values.recalculate();
    this.cells = CalculatedCell.all(template, setting.unit());
  }

  /** Compiles {@code template} and calculates every formula. */
  public static CalculatedWorkbook of(WorkbookTemplate template, WorkbookSetting setting) {
    return new CalculatedWorkbook(template, setting);
  }

  /** The file's bytes, every formula with its value. */
  public byte[] file() {
    Object[] calculated = cells.stream().map(this::value).toArray();
    Map<String, Object> inputs = new HashMap<>();
    template.inputs().forEach(input -> inputs.put(input.name(), setting.value(input)));
    return PressMaker.of(template, setting.unit(), workbook)
        .fill(new Press.Filling(calculated, inputs, setting.paper(), setting.colour()));
  }

  /**
   * One sentence for every entry of the templates that gives an error of its own, none where no
   * cell holds an error. Entries that only pass on another's error are counted.
   */
  public List<String> errors() {
    List<CalculatedCell> wrong =
        cells.stream().filter(cell -> value(cell) instanceof CellError).toList();
    Set<String> names = new HashSet<>();
    wrong.forEach(cell -> cell.source().name().ifPresent(names::add));
    List<String> sentences = new ArrayList<>();
    Set<Object> told = new HashSet<>();
    wrong.stream()
        .filter(cell -> cell.needs().stream().noneMatch(names::contains))
        .filter(cell -> told.add(cell.at()))
        .map(this::sentence)
        .forEach(sentences::add);
    if (sentences.isEmpty() && !wrong.isEmpty()) {
      sentences.add(sentence(wrong.get(0)));
    }
    return wrong.isEmpty() ? List.of() : cut(sentences, wrong.size() + " cells hold an error.");
  }

  private String sentence(CalculatedCell cell) {
    return cell.at()
        + ": "
        + cell.source().name().map(name -> name + " gives ").orElse("gives ")
        + value(cell)
        + " at "
        + WorkbookValues.where(written(cell))
        + ". Correct the formula.";
  }

  private static List<String> cut(List<String> sentences, String last) {
    List<String> shown = new ArrayList<>(sentences.subList(0, Math.min(SHOWN, sentences.size())));
    shown.add(last);
    return shown;
  }

  /**
   * Every name under which this workbook says something else than the engine, in reading order: of
   * a column its first row that differs. Names the engine does not have are left out.
   */
  public List<Disagreement> against(CellValues engine) {
    Map<String, Disagreement> found = new LinkedHashMap<>();
    for (CalculatedCell cell : cells) {
      Optional<String> name = cell.source().name();
      Optional<Object> ours = name.flatMap(known -> engine.value(cell.source()));
      Object yours = value(cell);
      if (ours.isPresent() && !same(ours.get(), yours)) {
        int row = cell.source() instanceof CellSource.Entry entry ? entry.row() + 1 : 0;
        found.putIfAbsent(name.get(), new Disagreement(name.get(), row, yours, ours.get()));
      }
    }
    return List.copyOf(found.values());
  }

  private static boolean same(Object ours, Object yours) {
    return ours instanceof Double a && yours instanceof Double b
        ? Math.abs(a - b) <= SAME * Math.max(1, Math.max(Math.abs(a), Math.abs(b)))
        : ours.equals(yours);
  }

  /**
   * What it says under every name, codes in place of their words; a check is 1 where all is well.
   */
  public NamedValues values() {
    Map<String, Object> lines = new LinkedHashMap<>();
    Map<String, List<Object>> columns = new LinkedHashMap<>();
    template.tables().forEach(table -> columns(table, columns));
    for (CalculatedCell cell : cells) {
      if (cell.source() instanceof CellSource.Line line) {
        lines.put(line.line(), value(cell));
      } else if (cell.source() instanceof CellSource.Fault fault) {
        lines.put(fault.check().name(), value(cell).equals(0.0) ? 1.0 : 0.0);
      } else if (cell.source() instanceof CellSource.Entry entry) {
        columns.get(entry.column()).add(value(cell));
      }
    }
    return Form.of(template).vocabulary().words().known(new NamedValues(lines, columns));
  }

  private static void columns(TableTemplate table, Map<String, List<Object>> columns) {
    table.columns().forEach(column -> columns.put(column.name(), new ArrayList<>()));
  }

  private Object value(CalculatedCell cell) {
    return values.value(written(cell));
  }

  private XSSFCell written(CalculatedCell cell) {
    XSSFRow row = workbook.getSheet(cell.sheet()).getRow(cell.row());
    return row.getCell(cell.column());
  }
}
