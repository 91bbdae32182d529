package frillbook.workbook;

import frillbook.naming.NamedValues;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
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
  private final XSSFWorkbook workbook;
  private final List<CalculatedCell> cells;
  private final byte[] file;

  private CalculatedWorkbook(WorkbookTemplate template, XSSFWorkbook workbook) {
    this.template = template;
    this.workbook = workbook;
    this.cells = CalculatedCell.all(template);
    this.file = WorkbookPackage.bytes(workbook);
  }

  /** Compiles {@code template} and calculates every formula. */
  public static CalculatedWorkbook of(WorkbookTemplate template, WorkbookSetting setting) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler().compileInto(workbook, template, setting);
    return new CalculatedWorkbook(template, workbook);
  }

  /** The file's bytes, every formula with its value. */
  public byte[] file() {
    return file;
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
        int row = cell.source() instanceof CalculatedCell.Entry entry ? entry.rowNo() + 1 : 0;
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

  /** What it says under every name; a check is 1 where all is well. */
  public NamedValues values() {
    Map<String, Object> lines = new LinkedHashMap<>();
    Map<String, List<Object>> columns = new LinkedHashMap<>();
    template.tables().forEach(table -> columns(table, columns));
    for (CalculatedCell cell : cells) {
      if (cell.source() instanceof CalculatedCell.Line line) {
        lines.put(line.line().name(), value(cell));
      } else if (cell.source() instanceof CalculatedCell.Fault fault) {
        lines.put(fault.check().name(), value(cell).equals(0.0) ? 1.0 : 0.0);
      } else if (cell.source() instanceof CalculatedCell.Entry entry) {
        columns.get(entry.column()).add(value(cell));
      }
    }
    return new NamedValues(lines, columns);
  }

  private static void columns(TableTemplate table, Map<String, List<Object>> columns) {
    table.columns().forEach(column -> columns.put(column.name(), new ArrayList<>()));
  }

  private Object value(CalculatedCell cell) {
    return WorkbookValues.stored(written(cell));
  }

  private XSSFCell written(CalculatedCell cell) {
    XSSFRow row = workbook.getSheet(cell.sheet()).getRow(cell.row());
    return row.getCell(cell.column());
  }
}
