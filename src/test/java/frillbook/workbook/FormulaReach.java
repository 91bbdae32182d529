package frillbook.workbook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Which formula cells hang on which cells, by what their formulas speak of: what a program may have
 * to calculate anew when one of them changes.
 */
final class FormulaReach {
  private final XSSFWorkbook workbook;
  private final XSSFEvaluationWorkbook evaluated;
  private final FormulaNames names;

  /** Cells whose formulas speak of a cell, by where that stands. */
  private final Map<String, List<String>> readers = new HashMap<>();

  private int formulas;

  /** Reads every formula of {@code workbook}. */
  FormulaReach(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.evaluated = XSSFEvaluationWorkbook.create(workbook);
    this.names = new FormulaNames(evaluated);
    for (int sheet = 0; sheet < workbook.getNumberOfSheets(); sheet++) {
      read(sheet);
    }
  }

  /** How many cells hold a formula. */
  int formulas() {
    return formulas;
  }

  private void read(int sheet) {
    for (Row row : workbook.getSheetAt(sheet)) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          read(sheet, cell);
        }
      }
    }
  }

  private void read(int sheet, Cell cell) {
    formulas++;
    String reader =
        where(cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex());
    Ptg[] formula =
        FormulaParser.parse(
            cell.getCellFormula(), names, FormulaType.CELL, sheet, cell.getRowIndex());
    Arrays.stream(formula)
        .flatMap(token -> cells(token, cell.getSheet().getSheetName()))
        .distinct()
        .forEach(read -> readers.computeIfAbsent(read, at -> new ArrayList<>()).add(reader));
  }

  private Stream<String> cells(Ptg token, String ownSheet) {
    String sheet = token instanceof Pxg elsewhere ? elsewhere.getSheetName() : ownSheet;
    if (token instanceof NamePtg name) {
      return cells(evaluated.getName(name).getNameText());
    } else if (token instanceof RefPtgBase cell) {
      return Stream.of(where(sheet, cell.getRow(), cell.getColumn()));
    } else if (token instanceof AreaPtgBase area) {
      return IntStream.rangeClosed(area.getFirstRow(), area.getLastRow())
          .boxed()
          .flatMap(
              row ->
                  IntStream.rangeClosed(area.getFirstColumn(), area.getLastColumn())
                      .mapToObj(column -> where(sheet, row, column)));
    }
    return Stream.empty();
  }

  /** The cells of a name, as {@link #where} writes them. */
  private Stream<String> cells(String name) {
    String reference = workbook.getName(name).getRefersToFormula();
    return Arrays.stream(
            new AreaReference(reference, SpreadsheetVersion.EXCEL2007).getAllReferencedCells())
        .map(cell -> where(cell.getSheetName(), cell.getRow(), cell.getCol()));
  }

  private static String where(String sheet, int row, int column) {
    return sheet + "!" + new CellReference(row, column).formatAsString();
  }

  /** Every formula cell that hangs on the cells of {@code name}: {@code Rings!B4}. */
  Set<String> of(String name) {
    Set<String> reached = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(cells(name).toList());
    while (!open.isEmpty()) {
      for (String reader : readers.getOrDefault(open.pop(), List.of())) {
        if (reached.add(reader)) {
          open.push(reader);
        }
      }
    }
    return reached;
  }

  /** Whether any cell of {@code name} is among {@code reached}. */
  boolean holds(Set<String> reached, String name) {
    return cells(name).anyMatch(reached::contains);
  }
}
