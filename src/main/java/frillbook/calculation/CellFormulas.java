package frillbook.calculation;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SharedFormula;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;

/**
 * The formulas of a workbook, parsed. One that is filled down is parsed once, whether the file says
 * so or every cell has its own; the library would parse and write it anew for every cell, looking
 * for each of its names among all.
 */
public final class CellFormulas {
  private static final SharedFormula FILL = new SharedFormula(SpreadsheetVersion.EXCEL2007);

  private final FormulaNames names;

  /** Formulas that the file says are filled down, by sheet and number. */
  private final Map<XSSFSheet, Map<Long, Filled>> filled = new HashMap<>();

  /** Formulas that every cell has for itself, by how they are filled down. */
  private final Map<Column, Filled> first = new HashMap<>();

  /** A formula where it is filled down from. */
  private record Filled(Ptg[] tokens, XSSFCell from) {
    Ptg[] in(XSSFCell cell) {
      return FILL.convertSharedFormulas(
          tokens,
          cell.getRowIndex() - from.getRowIndex(),
          cell.getColumnIndex() - from.getColumnIndex());
    }
  }

  /** What two cells of a column have in common where one is filled down from the other. */
  private record Column(XSSFSheet sheet, int column, String pattern) {}

  public CellFormulas(XSSFWorkbook written) {
    names = new FormulaNames(written);
  }

  /** The formula of {@code cell}, which must have one, as the evaluator takes it. */
  public Ptg[] tokens(XSSFCell cell) {
    return isFilled(cell)
        ? filled.computeIfAbsent(cell.getSheet(), this::filled).get(number(cell)).in(cell)
        : tokens(cell, cell.getCellFormula());
  }

  private Ptg[] tokens(XSSFCell cell, String formula) {
    return RowPattern.of(formula, cell.getRowIndex() + 1)
        .map(pattern -> new Column(cell.getSheet(), cell.getColumnIndex(), pattern))
        .map(column -> first.computeIfAbsent(column, of -> new Filled(parsed(cell, formula), cell)))
        .map(filled -> filled.in(cell))
        .orElseGet(() -> parsed(cell, formula));
  }

  private Map<Long, Filled> filled(XSSFSheet sheet) {
    Map<Long, Filled> found = new HashMap<>();
    for (Row row : sheet) {
      for (Cell each : row) {
        XSSFCell cell = (XSSFCell) each;
        if (isFilled(cell) && cell.getCTCell().getF().isSetRef()) {
          Ptg[] tokens = parsed(cell, cell.getCTCell().getF().getStringValue());
          found.put(number(cell), new Filled(tokens, cell));
        }
      }
    }
    return found;
  }

  private Ptg[] parsed(XSSFCell cell, String formula) {
    int sheet = cell.getSheet().getWorkbook().getSheetIndex(cell.getSheet());
    return FormulaParser.parse(formula, names, FormulaType.CELL, sheet, cell.getRowIndex());
  }

  private static boolean isFilled(XSSFCell cell) {
    CTCellFormula formula = cell.getCTCell().getF();
    return formula != null && formula.getT() == STCellFormulaType.SHARED;
  }

  private static long number(XSSFCell cell) {
    return cell.getCTCell().getF().getSi();
  }
}
