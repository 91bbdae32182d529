package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.ZipParts;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.WorkbookPackage;
import frillbook.workbook.WorkbookCompiler;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The file that the packaged templates give, as a whole. */
final class PackageTest {
  private static final int LARGEST_FILE = 300_000;

  private static Map<String, String> parts(LengthUnit unit) throws IOException {
    return ZipParts.texts(PackagedFile.of(unit));
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void aProgramIsAskedToCalculateOnOpening(LengthUnit unit) throws IOException {
    assertTrue(PackagedFile.read(unit).getForceFormulaRecalculation());
    String workbook = parts(unit).get("xl/workbook.xml");
    assertTrue(workbook.contains("fullCalcOnLoad=\"true\""), workbook);
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void nothingInThePackageRunsOrPointsOutside(LengthUnit unit) throws IOException {
    Map<String, String> parts = parts(unit);
    assertTrue(parts.size() > 10, parts.keySet().toString());
    for (Map.Entry<String, String> part : parts.entrySet()) {
      String name = part.getKey().toLowerCase(Locale.ROOT);
      assertFalse(name.matches(".*(vba|macro|activex|externallink|connection).*"), name);
      assertFalse(part.getValue().contains("TargetMode=\"External\""), name);
      assertFalse(part.getValue().contains("macroEnabled"), name);
    }
    XSSFWorkbook workbook = PackagedFile.read(unit);
    FormulaTexts formulas = new FormulaTexts(workbook);
    for (XSSFCell cell : PackagedFile.formulaCells(workbook)) {
      assertFalse(formulas.of(cell).contains("["), SheetValues.where(cell));
    }
  }

  /** Against the ISO/IEC 29500 schemas that the library carries. */
  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void everyPartReadBackIsValid(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = PackagedFile.read(unit);
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
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void sheetNamesAreLegal(LengthUnit unit) throws IOException {
    XSSFWorkbook workbook = PackagedFile.read(unit);
    assertEquals(Trials.TEMPLATE.sheets().size(), workbook.getNumberOfSheets());
    workbook.forEach(sheet -> WorkbookUtil.validateSheetName(sheet.getSheetName()));
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void theFileIsSmallEnoughForAMessage(LengthUnit unit) {
    assertTrue(
        PackagedFile.of(unit).length < LARGEST_FILE, PackagedFile.of(unit).length + " bytes");
  }

  @ParameterizedTest
  @MethodSource("frillbook.agreement.PackagedFile#units")
  void theSameInputsGiveTheSameBytes(LengthUnit unit) {
    assertArrayEquals(PackagedFile.of(unit), PackagedFile.made(unit));
  }

  @Test
  void inchAndCentimetreFilesDiffer() {
    assertFalse(Arrays.equals(PackagedFile.of(Trials.INCH), PackagedFile.of(Trials.CM)));
  }

  /** Where nothing is calculated, the one word that was typed is the whole difference. */
  @Test
  void aCurrencyIsAValueAndNothingElse() throws IOException {
    Map<String, String> yen = ZipParts.texts(uncalculated("JPY"));
    Map<String, String> euros = ZipParts.texts(uncalculated("EUR"));
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
}
