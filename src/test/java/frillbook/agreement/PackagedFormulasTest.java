package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import frillbook.formula.PortableFunctions;
import frillbook.measure.LengthUnit;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.FuncVarPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The formulas of the file that the packaged templates give, and what is stored beside them. */
final class PackagedFormulasTest {
  /** Characters of a formula (Excel specifications and limits, Microsoft). */
  private static final int LONGEST_FORMULA = 8192;

  private static final int EVERY_NTH = 97;

  /** Functions that calculate anew whenever anything changes (ECMA-376, 18.17). */
  private static final Set<String> VOLATILE =
      Set.of("NOW", "TODAY", "RAND", "RANDBETWEEN", "OFFSET", "INDIRECT", "INFO", "CELL");

  /** The functions that the library's parser finds in a cell's formula. */
  private static Set<String> functions(FormulaTexts formulas, XSSFCell cell) {
    Set<String> functions = new TreeSet<>();
    for (Ptg piece : formulas.tokens(cell)) {
      if (piece instanceof AbstractFunctionPtg function) {
        functions.add(function.getName());
      } else if (piece instanceof AttrPtg attribute && attribute.isSum()) {
        functions.add("SUM");
      }
    }
    return functions;
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void everyFunctionIsPortable(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = PackagedFile.read(unit);
    FormulaTexts formulas = new FormulaTexts(workbook);
    List<String> others = new ArrayList<>();
    Set<String> used = new TreeSet<>();
    for (XSSFCell cell : PackagedFile.formulaCells(workbook)) {
      for (String function : functions(formulas, cell)) {
        used.add(function);
        if (!PortableFunctions.names().contains(function)) {
          others.add(SheetValues.where(cell) + " " + function + " in " + formulas.of(cell));
        }
      }
    }
    assertEquals(List.of(), others);
    assertTrue(used.containsAll(Set.of("IF", "SUMPRODUCT", "SUM", "ASINH")), used.toString());
  }

  @Test
  void noPortableFunctionIsVolatile() {
    Set<String> both = new TreeSet<>(PortableFunctions.names());
    both.retainAll(VOLATILE);
    assertEquals(Set.of(), both);
    assertTrue(FuncVarPtg.isBuiltInFunctionName("OFFSET"), "the list is of real functions");
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void noFormulaIsAnArrayFormulaOrTooLong(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = PackagedFile.read(unit);
    FormulaTexts formulas = new FormulaTexts(workbook);
    List<XSSFCell> cells = PackagedFile.formulaCells(workbook);
    assertTrue(cells.size() > 1000, "formulas");
    for (XSSFCell cell : cells) {
      assertFalse(cell.isPartOfArrayFormulaGroup(), SheetValues.where(cell));
      assertTrue(formulas.of(cell).length() < LONGEST_FORMULA, SheetValues.where(cell));
    }
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void everyFormulaCellHasAValueAndNoneIsAnError(LengthUnit unit) throws Exception {
    FormulaCells cells = FormulaCells.of(PackagedFile.of(unit));
    assertEquals(cells.formulas(), cells.values(), cells.toString());
    assertTrue(cells.formulas() > 1000, cells.toString());
    assertEquals(List.of(), SheetValues.storedErrors(PackagedFile.read(unit)));
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void storedValuesAreThoseOfTheEngine(LengthUnit unit) throws IOException {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, unit);
    Comparison.of(Trials.TEMPLATE, preset, SheetValues.stored(PackagedFile.read(unit)))
        .requireAgreement();
  }

  @Test
  void anUnusualFunctionWouldBeSeen() {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Cell cell = workbook.createSheet("One").createRow(0).createCell(0);
      cell.setCellFormula("SUM(1,OFFSET(A2,1,1))");
      FormulaTexts formulas = new FormulaTexts(workbook);
      assertEquals(Set.of("OFFSET", "SUM"), functions(formulas, (XSSFCell) cell));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** What a template writes in braces is filled in, in words and in formulas. */
  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void noBraceIsLeft(LengthUnit unit) throws IOException {
    List<String> left = new ArrayList<>();
    XSSFWorkbook workbook = PackagedFile.read(unit);
    FormulaTexts formulas = new FormulaTexts(workbook);
    for (XSSFCell cell : PackagedFile.cells(workbook)) {
      boolean formula = cell.getCellType() == CellType.FORMULA;
      String text = formula ? formulas.of(cell) : cell.toString();
      if (text.contains("{")) {
        left.add(SheetValues.where(cell) + " " + text);
      }
    }
    assertEquals(List.of(), left);
  }

  /** Filled-down formulas are stored once; read by POI, every cell has its own again. */
  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void everyFormulaIsReadBackAsItWasMeant(LengthUnit unit) throws IOException {
    XSSFWorkbook meant = TrialWorkbook.compiled(Trials.TEMPLATE, unit);
    XSSFWorkbook back = PackagedFile.read(unit);
    FormulaTexts meantFormulas = new FormulaTexts(meant);
    FormulaTexts backFormulas = new FormulaTexts(back);
    int compared = 0;
    for (XSSFCell cell : PackagedFile.formulaCells(meant)) {
      String formula = meantFormulas.of(cell);
      XSSFCell read = same(back, cell);
      // What is written alike is the same; to parse both takes longer than all else.
      if (!formula.equals(backFormulas.of(read))) {
        assertEquals(
            words(meantFormulas.parsedAlone(cell)),
            words(backFormulas.tokens(read)),
            () -> SheetValues.where(cell) + " " + formula);
      }
      compared++;
    }
    assertTrue(compared > 10_000, compared + " formulas");
  }

  private static XSSFCell same(XSSFWorkbook workbook, XSSFCell cell) {
    XSSFSheet sheet = workbook.getSheet(cell.getSheet().getSheetName());
    return sheet.getRow(cell.getRowIndex()).getCell(cell.getColumnIndex());
  }

  private static List<String> words(Ptg[] tokens) {
    return Arrays.stream(tokens).map(Ptg::toString).toList();
  }

  /** A formula that is filled down is what the library makes of it, cell by cell. */
  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void aFormulaThatIsFilledDownReadsAsTheLibraryReadsIt(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = PackagedFile.read(unit);
    FormulaTexts formulas = new FormulaTexts(workbook);
    int filled = 0;
    for (XSSFCell cell : Sample.every(PackagedFile.formulaCells(workbook), EVERY_NTH)) {
      assertEquals(cell.getCellFormula(), formulas.of(cell), SheetValues.where(cell));
      filled += cell.getCTCell().getF().isSetSi() ? 1 : 0;
    }
    assertTrue(filled > 100, filled + " filled down");
  }
}
