package frillbook.calculation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.StringValueEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Reads a workbook's values by their defined names, and calculates them anew after an input has
 * changed.
 *
 * <p>Until the first {@link #recalculate()} the values stored in the file are given, so that what
 * another program has calculated can be read too. A value is a Double, a String (empty for a blank
 * cell), a Boolean, or a {@link CellError}.
 */
public final class WorkbookValues {
  private final XSSFWorkbook workbook;
  private final ParsedWorkbook cells;
  private final WorkbookEvaluator evaluator;
  private final Map<String, AreaReference> names = new LinkedHashMap<>();

  /** Every formula, sheet by sheet, row by row; sought when they are needed. */
  private final List<ParsedCell> formulas = new ArrayList<>();

  /** Every formula by its cell. */
  private final Map<XSSFCell, ParsedCell> formulaOf = new IdentityHashMap<>();

  private boolean calculated;

  /** Whether every formula holds what it came to. */
  private boolean followed;

  /** Inputs since the last recalculation. */
  private final Set<String> changed = new HashSet<>();

  /** Known once it was asked for; a workbook that is calculated once does without. */
  private FormulaReach reach;

  public WorkbookValues(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.cells = new ParsedWorkbook(workbook);
    this.evaluator = new WorkbookEvaluator(cells, IStabilityClassifier.TOTALLY_IMMUTABLE, null);
    workbook.getAllNames().forEach(this::take);
  }

  private void take(Name name) {
    // Names of one sheet are print titles and the like.
    if (name.getSheetIndex() < 0) {
      area(name).ifPresent(area -> names.put(name.getNameName(), area));
    }
  }

  /** Nothing for a name whose cells were deleted, or that a person gave to something else. */
  private static Optional<AreaReference> area(Name name) {
    try {
      String area = name.getRefersToFormula();
      return Optional.of(new AreaReference(area, SpreadsheetVersion.EXCEL2007));
    } catch (IllegalArgumentException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  private void findFormulas() {
    if (formulas.isEmpty()) {
      workbook.forEach(sheet -> sheet.forEach(this::takeFormulas));
      formulas.forEach(formula -> formulaOf.put(formula.written(), formula));
    }
  }

  private void takeFormulas(Row row) {
    for (Cell cell : row) {
      if (cell.getCellType() == CellType.FORMULA) {
        formulas.add(evaluationCell((XSSFCell) cell));
      }
    }
  }

  /** Every defined name of the whole workbook. */
  public Set<String> names() {
    return names.keySet();
  }

  /** Every cell with a formula that hangs on the cells of {@code name}, by whatever way. */
  List<XSSFCell> hangingOn(String name) {
    findFormulas();
    return reach().of(name).stream().mapToObj(formulas::get).map(ParsedCell::written).toList();
  }

  /** Every cell with a formula, sheet by sheet, row by row. */
  public List<XSSFCell> formulaCells() {
    findFormulas();
    return formulas.stream().map(ParsedCell::written).toList();
  }

  /** The value of a name's first cell. */
  public Object value(String name) {
    return value(cell(area(name).getFirstCell()));
  }

  /** The values of all cells of a name, row by row. */
  public List<Object> column(String name) {
    List<Object> values = new ArrayList<>();
    cells(name).forEach(cell -> values.add(value(cell)));
    return values;
  }

  /** The cells of a name, row by row; {@code null} where there is none. */
  List<XSSFCell> cells(String name) {
    List<XSSFCell> all = new ArrayList<>();
    for (CellReference place : area(name).getAllReferencedCells()) {
      all.add(cell(place));
    }
    return all;
  }

  /** The value of a cell; {@code null} stands for a cell that is not there. */
  public Object value(XSSFCell cell) {
    ParsedCell known = formulaOf.get(cell);
    if (known != null && known.result() != null) {
      return known.result();
    }
    boolean formula = cell != null && cell.getCellType() == CellType.FORMULA;
    return calculated && formula ? plain(evaluator.evaluate(evaluationCell(cell))) : stored(cell);
  }

  private Object value(ParsedCell formula) {
    return formula.result() == null ? value(formula.written()) : formula.result();
  }

  /**
   * Puts a Double or String into an input's cell, or empties it for {@code null}. Other values
   * follow with {@link #recalculate()}.
   */
  public void set(String inputName, Object value) {
    XSSFCell cell = cell(area(inputName).getFirstCell());
    Object before = stored(cell);
    CellFill.fill(cell, value);
    if (!before.equals(stored(cell))) {
      evaluationCell(cell).refresh();
      changed.add(inputName);
    }
  }

  /** Whether the first cell of a name calculates. */
  public boolean hasFormula(String name) {
    XSSFCell cell = cell(area(name).getFirstCell());
    return cell != null && cell.getCellType() == CellType.FORMULA;
  }

  /** What the formula in a name's first cell comes to; nothing where the library cannot tell. */
  public Optional<Object> calculated(String name) {
    return calculated(name, 0);
  }

  /** The same of the cell in row {@code row}, from 0, of a name's cells. */
  public Optional<Object> calculated(String name, int row) {
    try {
      XSSFCell cell = cell(area(name).getAllReferencedCells()[row]);
      return Optional.of(inRootLocale(() -> plain(evaluator.evaluate(evaluationCell(cell)))));
    } catch (RuntimeException e) {
      // It throws many kinds: functions and names it does not know, links to other workbooks.
      return Optional.empty();
    }
  }

  /** The value that was saved with the formula in a name's first cell, if one was. */
  public Optional<Object> saved(String name) {
    XSSFCell cell = cell(area(name).getFirstCell());
    return isSaved(cell) ? Optional.of(stored(cell)) : Optional.empty();
  }

  /** Some programs leave the value out, some leave it empty; empty words are a value. */
  private static boolean isSaved(XSSFCell cell) {
    String written = cell.getCTCell().getV();
    return written != null
        && (!written.isEmpty() || cell.getCachedFormulaResultType() == CellType.STRING);
  }

  /** Gives calculated values from now on, each when it is asked for. */
  public void forgetStored() {
    calculated = true;
    formulas.forEach(ParsedCell::forget);
    followed = false;
    evaluator.clearAllCachedResultValues();
  }

  /**
   * Calculates anew: every formula at first, and from then on those that speak of a cell whose
   * value is another than before.
   */
  public void recalculate() {
    findFormulas();
    evaluator.clearAllCachedResultValues();
    inRootLocale(
        () -> {
          if (followed) {
            reach().follow(changed, this::changes);
          } else {
            calculateAll();
          }
          return null;
        });
    changed.clear();
    calculated = true;
    followed = true;
  }

  private void calculateAll() {
    formulas.forEach(ParsedCell::calculateAnew);
    List<Object> results =
        formulas.stream().map(formula -> plain(evaluator.evaluate(formula))).toList();
    for (int number = 0; number < formulas.size(); number++) {
      formulas.get(number).hold(results.get(number));
    }
  }

  /** Calculates a formula all of whose precedents are known; whether it comes to something else. */
  private boolean changes(int number) {
    ParsedCell formula = formulas.get(number);
    Object before = formula.result();
    formula.calculateAnew();
    Object result = plain(evaluator.evaluate(formula));
    formula.hold(result);
    return !result.equals(before);
  }

  private FormulaReach reach() {
    if (reach == null) {
      reach = new FormulaReach(workbook, cells, formulas);
    }
    return reach;
  }

  /** The library writes numbers that are joined to texts as the reader's language does. */
  private static <T> T inRootLocale(Supplier<T> calculation) {
    LocaleUtil.setUserLocale(Locale.ROOT);
    try {
      return calculation.get();
    } finally {
      LocaleUtil.resetUserLocale();
    }
  }

  /** Every formula cell whose value is an error, as {@code Brief!B7 is #DIV/0!}. */
  public List<String> errors() {
    findFormulas();
    return formulas.stream()
        .filter(formula -> value(formula) instanceof CellError)
        .map(formula -> where(formula.written()) + " is " + value(formula))
        .toList();
  }

  /** The address of a name's first cell: {@code Brief!B7}. */
  public String where(String name) {
    CellReference place = area(name).getFirstCell();
    String cell = new CellReference(place.getRow(), place.getCol()).formatAsString();
    return place.getSheetName() + "!" + cell;
  }

  /** The address of a cell: {@code Brief!B7}. */
  public static String where(XSSFCell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  private AreaReference area(String name) {
    AreaReference area = names.get(name);
    if (area == null) {
      throw new IllegalArgumentException("the workbook has no name " + name);
    }
    return area;
  }

  private XSSFCell cell(CellReference place) {
    XSSFRow row = workbook.getSheet(place.getSheetName()).getRow(place.getRow());
    return row == null ? null : row.getCell(place.getCol());
  }

  private ParsedCell evaluationCell(XSSFCell cell) {
    int sheet = workbook.getSheetIndex(cell.getSheet());
    return cells.getSheet(sheet).getCell(cell.getRowIndex(), cell.getColumnIndex());
  }

  private static Object plain(ValueEval value) {
    if (value instanceof BoolEval truth) {
      return truth.getBooleanValue();
    } else if (value instanceof NumericValueEval number) {
      return number.getNumberValue();
    } else if (value instanceof StringValueEval text) {
      return text.getStringValue();
    } else if (value instanceof ErrorEval error) {
      return new CellError(error.getErrorString());
    }
    return "";
  }

  /**
   * The value written in a cell, for a formula the one it had when it was saved; {@code null}
   * stands for a cell that is not there.
   */
  public static Object stored(XSSFCell cell) {
    if (cell == null) {
      return "";
    }
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> number(cell);
      case BOOLEAN -> cell.getBooleanCellValue();
      case STRING -> cell.getStringCellValue();
      case ERROR -> new CellError(FormulaError.forInt(cell.getErrorCellValue()).getString());
      default -> "";
    };
  }

  /** The library gives 0 for a number that is not there. */
  private static Object number(XSSFCell cell) {
    double number = cell.getNumericCellValue();
    String written = number == 0 ? cell.getRawValue() : "0";
    return written == null || written.isEmpty() ? "" : (Object) number;
  }
}
