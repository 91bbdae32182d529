package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.formula.PortableFunctions;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.WorkbookPackage;
import frillbook.workbook.WorkbookCompiler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.FuncVarPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The file that the packaged templates give. */
final class PackageTest {
  private static final int LARGEST_FILE = 300_000;

  /** Characters of a formula (Excel specifications and limits, Microsoft). */
  private static final int LONGEST_FORMULA = 8192;

  /** Functions that calculate anew whenever anything changes (ECMA-376, 18.17). */
  private static final Set<String> VOLATILE =
      Set.of("NOW", "TODAY", "RAND", "RANDBETWEEN", "OFFSET", "INDIRECT", "INFO", "CELL");

  private static final Map<LengthUnit, byte[]> FILES = new HashMap<>();

  private static final Map<LengthUnit, XSSFWorkbook> READ = new HashMap<>();

  /** The library parses a formula that is filled down anew for every cell. */
  private static final Map<Cell, String> FORMULAS = new IdentityHashMap<>();

  private static String formulaOf(Cell cell) {
    return FORMULAS.computeIfAbsent(cell, Cell::getCellFormula);
  }

  static List<LengthUnit> both() {
    return List.of(Trials.INCH, Trials.CM);
  }

  private static byte[] file(LengthUnit unit) {
    return FILES.computeIfAbsent(unit, PackageTest::made);
  }

  private static byte[] made(LengthUnit unit) {
    return PressedFile.of(TrialBrief.preset(Trials.TEMPLATE, unit));
  }

  private static XSSFWorkbook read(LengthUnit unit) throws IOException {
    if (!READ.containsKey(unit)) {
      READ.put(unit, new XSSFWorkbook(new ByteArrayInputStream(file(unit))));
    }
    return READ.get(unit);
  }

  private static Map<String, String> parts(LengthUnit unit) throws IOException {
    return parts(file(unit));
  }

  private static Map<String, String> parts(byte[] file) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return parts;
  }

  private static List<XSSFCell> formulaCells(XSSFWorkbook workbook) {
    List<XSSFCell> cells = new ArrayList<>();
    workbook.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell -> {
                          if (cell.getCellType() == CellType.FORMULA) {
                            cells.add((XSSFCell) cell);
                          }
                        })));
    return cells;
  }

  /** The functions that the library's parser finds in a cell's formula. */
  private static Set<String> functions(XSSFEvaluationWorkbook names, XSSFCell cell) {
    int sheet = cell.getSheet().getWorkbook().getSheetIndex(cell.getSheet());
    Ptg[] parsed =
        FormulaParser.parse(formulaOf(cell), names, FormulaType.CELL, sheet, cell.getRowIndex());
    Set<String> functions = new TreeSet<>();
    for (Ptg piece : parsed) {
      if (piece instanceof AbstractFunctionPtg function) {
        functions.add(function.getName());
      } else if (piece instanceof AttrPtg attribute && attribute.isSum()) {
        functions.add("SUM");
      }
    }
    return functions;
  }

  @ParameterizedTest
  @MethodSource("both")
  void everyFunctionIsPortable(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = read(unit);
    XSSFEvaluationWorkbook names = XSSFEvaluationWorkbook.create(workbook);
    List<String> others = new ArrayList<>();
    Set<String> used = new TreeSet<>();
    for (XSSFCell cell : formulaCells(workbook)) {
      for (String function : functions(names, cell)) {
        used.add(function);
        if (!PortableFunctions.names().contains(function)) {
          others.add(SheetValues.where(cell) + " " + function + " in " + formulaOf(cell));
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
  @MethodSource("both")
  void noFormulaIsAnArrayFormulaOrTooLong(LengthUnit unit) throws IOException {
    List<XSSFCell> cells = formulaCells(read(unit));
    assertTrue(cells.size() > 1000, "formulas");
    for (XSSFCell cell : cells) {
      assertFalse(cell.isPartOfArrayFormulaGroup(), SheetValues.where(cell));
      assertTrue(formulaOf(cell).length() < LONGEST_FORMULA, SheetValues.where(cell));
    }
  }

  @ParameterizedTest
  @MethodSource("both")
  void everyFormulaCellHasAValueAndNoneIsAnError(LengthUnit unit) throws Exception {
    FormulaCells cells = FormulaCells.of(file(unit));
    assertEquals(cells.formulas(), cells.values(), cells.toString());
    assertTrue(cells.formulas() > 1000, cells.toString());
    assertEquals(List.of(), SheetValues.storedErrors(read(unit)));
  }

  @ParameterizedTest
  @MethodSource("both")
  void storedValuesAreThoseOfTheEngine(LengthUnit unit) throws IOException {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, unit);
    Comparison.of(Trials.TEMPLATE, preset, SheetValues.stored(read(unit))).requireAgreement();
  }

  @ParameterizedTest
  @MethodSource("both")
  void aProgramIsAskedToCalculateOnOpening(LengthUnit unit) throws IOException {
    assertTrue(read(unit).getForceFormulaRecalculation());
    String workbook = parts(unit).get("xl/workbook.xml");
    assertTrue(workbook.contains("fullCalcOnLoad=\"true\""), workbook);
  }

  @ParameterizedTest
  @MethodSource("both")
  void nothingInThePackageRunsOrPointsOutside(LengthUnit unit) throws IOException {
    Map<String, String> parts = parts(unit);
    assertTrue(parts.size() > 10, parts.keySet().toString());
    for (Map.Entry<String, String> part : parts.entrySet()) {
      String name = part.getKey().toLowerCase(Locale.ROOT);
      assertFalse(name.matches(".*(vba|macro|activex|externallink|connection).*"), name);
      assertFalse(part.getValue().contains("TargetMode=\"External\""), name);
      assertFalse(part.getValue().contains("macroEnabled"), name);
    }
    for (XSSFCell cell : formulaCells(read(unit))) {
      assertFalse(formulaOf(cell).contains("["), SheetValues.where(cell));
    }
  }

  /** Against the ISO/IEC 29500 schemas that the library carries. */
  @ParameterizedTest
  @MethodSource("both")
  void everyPartReadBackIsValid(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = read(unit);
    List<XmlObject> parts = new ArrayList<>();
    workbook.forEach(sheet -> parts.add(((XSSFSheet) sheet).getCTWorksheet()));
    parts.add(workbook.getCTWorkbook());
    parts.add(workbook.getStylesSource().getCTStylesheet());
    List<XmlError> errors = new ArrayList<>();
    parts.forEach(part -> part.validate(new XmlOptions().setErrorListener(errors)));
    assertEquals(List.of(), errors);
    assertEquals(Trials.TEMPLATE.sheets().size() + 2, parts.size());
  }

  @ParameterizedTest
  @MethodSource("both")
  void sheetNamesAreLegal(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = read(unit);
    assertEquals(Trials.TEMPLATE.sheets().size(), workbook.getNumberOfSheets());
    workbook.forEach(sheet -> WorkbookUtil.validateSheetName(sheet.getSheetName()));
  }

  @ParameterizedTest
  @MethodSource("both")
  void theFileIsSmallEnoughForAMessage(LengthUnit unit) {
    assertTrue(file(unit).length < LARGEST_FILE, file(unit).length + " bytes");
  }

  @ParameterizedTest
  @MethodSource("both")
  void theSameInputsGiveTheSameBytes(LengthUnit unit) {
    assertArrayEquals(file(unit), made(unit));
  }

  @ParameterizedTest
  @CsvSource({"tr-TR, Pacific/Kiritimati", "de-DE, America/St_Johns", "ar-EG, Asia/Kathmandu"})
  void theBytesDoNotDependOnLanguageOrTimeZone(String language, String zone) {
    byte[] here = file(Trials.INCH);
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertArrayEquals(here, made(Trials.INCH));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }

  @Test
  void inchAndCentimetreFilesDiffer() {
    assertFalse(Arrays.equals(file(Trials.INCH), file(Trials.CM)));
  }

  /** Where nothing is calculated, the one word that was typed is the whole difference. */
  @Test
  void aCurrencyIsAValueAndNothingElse() throws IOException {
    Map<String, String> yen = parts(uncalculated("JPY"));
    Map<String, String> euros = parts(uncalculated("EUR"));
    yen.computeIfPresent("xl/sharedStrings.xml", (name, words) -> words.replace(">JPY<", ">EUR<"));
    assertEquals(euros, yen);
  }

  private static byte[] uncalculated(String code) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    Map<String, Object> inputs = Map.of("currency_code", code);
    WorkbookSetting setting = new WorkbookSetting(Trials.CM, inputs, Paper.A4);
    new WorkbookCompiler().compileInto(workbook, Trials.TEMPLATE, setting);
    return WorkbookPackage.asItIs(workbook);
  }

  @Test
  void anUnusualFunctionWouldBeSeen() {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Cell cell = workbook.createSheet("One").createRow(0).createCell(0);
      cell.setCellFormula("SUM(1,OFFSET(A2,1,1))");
      var names = XSSFEvaluationWorkbook.create(workbook);
      assertEquals(Set.of("OFFSET", "SUM"), functions(names, (XSSFCell) cell));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** What a template writes in braces is filled in, in words and in formulas. */
  @ParameterizedTest
  @MethodSource("both")
  void noBraceIsLeft(LengthUnit unit) throws IOException {
    List<String> left = new ArrayList<>();
    read(unit)
        .forEach(
            sheet ->
                sheet.forEach(
                    row ->
                        row.forEach(
                            cell -> {
                              boolean formula = cell.getCellType() == CellType.FORMULA;
                              String text = formula ? formulaOf(cell) : cell.toString();
                              if (text.contains("{")) {
                                left.add(SheetValues.where((XSSFCell) cell) + " " + text);
                              }
                            })));
    assertEquals(List.of(), left);
  }

  /** Filled-down formulas are stored once; read by POI, every cell has its own again. */
  @ParameterizedTest
  @MethodSource("both")
  void everyFormulaIsReadBackAsItWasMeant(LengthUnit unit) throws IOException {
    XSSFWorkbook meant = TrialWorkbook.compiled(Trials.TEMPLATE, unit);
    XSSFWorkbook back = read(unit);
    var meantNames = XSSFEvaluationWorkbook.create(meant);
    var backNames = XSSFEvaluationWorkbook.create(back);
    int compared = 0;
    for (int index = 0; index < meant.getNumberOfSheets(); index++) {
      for (Row row : meant.getSheetAt(index)) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            List<String> read = tokens(backNames, same(back, index, cell));
            assertEquals(tokens(meantNames, cell), read, () -> formula(cell));
            compared++;
          }
        }
      }
    }
    assertTrue(compared > 10_000, compared + " formulas");
  }

  private static String formula(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress() + " " + formulaOf(cell);
  }

  private static Cell same(XSSFWorkbook workbook, int sheet, Cell cell) {
    return workbook.getSheetAt(sheet).getRow(cell.getRowIndex()).getCell(cell.getColumnIndex());
  }

  private static List<String> tokens(XSSFEvaluationWorkbook names, Cell cell) {
    int sheet = cell.getSheet().getWorkbook().getSheetIndex(cell.getSheet());
    Ptg[] parsed =
        FormulaParser.parse(formulaOf(cell), names, FormulaType.CELL, sheet, cell.getRowIndex());
    return Arrays.stream(parsed).map(Ptg::toString).toList();
  }
}
