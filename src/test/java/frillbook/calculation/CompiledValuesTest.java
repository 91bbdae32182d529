package frillbook.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.chart.Bunting;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.TemplateReader;
import frillbook.workbook.WorkbookCompiler;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Values of the bunting, each worked out by hand beside its assertion. */
final class CompiledValuesTest {
  private final WorkbookValues inch = Bunting.calculated(LengthUnit.INCH);

  private void is(Object expected, String name) {
    if (expected instanceof Double number) {
      assertEquals(number, (Double) inch.value(name), 1e-12, inch.where(name));
    } else {
      assertEquals(expected, inch.value(name), inch.where(name));
    }
  }

  @Test
  void linesFollowTheirFormulas() {
    is(15.0, "flag_count"); // 100 / 6.5 = 15.38…
    is(1.25, "bare_tape"); // (100 − 15 × 6.5) / 2
    is(204.75, "fabric_length"); // 2 × 15 × 6.5 × 1.05, already a whole eighth
    is(26.40625, "flag_area"); // 6.5 × 6.5 × 1.25 / 2
    is(0.025, "bare_share"); // 2 × 1.25 / 100
    is(0.0, "lined");
  }

  @Test
  void theUnitIsFilledIntoTexts() {
    is("about 15 flags of 6.5 in", "verdict");
  }

  @Test
  void theOtherUnitStandsBesideALength() {
    // 1.25 in × 2.54
    assertEquals(3.175, (Double) beside("bare_tape", inch), 1e-12);
  }

  @Test
  void inACentimetreWorkbookTheOtherUnitIsInch() {
    // 254 − 15 × 16.5 = 6.5, half of it 3.25 cm, over 2.54
    WorkbookValues cm = Bunting.calculated(LengthUnit.CM);
    assertEquals(3.25 / 2.54, (Double) beside("bare_tape", cm), 1e-12);
  }

  private static Object beside(String name, WorkbookValues values) {
    return values.formulaCells().stream()
        .filter(cell -> WorkbookValues.where(cell).equals("Brief!D12"))
        .filter(cell -> values.where(name).equals("Brief!B12"))
        .map(values::value)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTableCellMayNeedTheRowAbove() {
    List<Object> begins = inch.column("flag_from");
    assertEquals(1.25, (Double) begins.get(0), 1e-12);
    assertEquals(1.25 + 14 * 6.5, (Double) begins.get(14), 1e-12);
  }

  @Test
  void rowsPastTheConditionAreBlank() {
    assertEquals(60, inch.column("flag_to").size());
    assertEquals("", inch.column("flag_no").get(15));
    assertEquals("", inch.column("flag_to").get(15));
    assertEquals("", inch.column("flag_third").get(59));
  }

  @Test
  void aBlockIsReadRowByRow() {
    assertEquals(List.of(1.25, 7.75, 7.75, 14.25), inch.column("flag_reach").subList(0, 4));
  }

  @Test
  void namesStandForAbsoluteCellsOfTheWholeWorkbook() {
    XSSFWorkbook workbook = Bunting.compiled(LengthUnit.INCH);
    assertEquals("Brief!$B$4", workbook.getName("tape").getRefersToFormula());
    assertEquals("'Flag by flag'!$B$5:$B$64", workbook.getName("flag_from").getRefersToFormula());
    assertEquals("'Flag by flag'!$B$5:$C$64", workbook.getName("flag_reach").getRefersToFormula());
    assertEquals("Checks!$B$2:$B$9", workbook.getName("check_fault").getRefersToFormula());
    assertEquals("Checks!$C$2:$C$9", workbook.getName("check_sentence").getRefersToFormula());
    assertEquals("Checks!$B$4:$B$9", workbook.getName("input_fault").getRefersToFormula());
    assertEquals("Checks!$B$4:$B$6", workbook.getName("tape_fault").getRefersToFormula());
    assertEquals("Checks!$B$7:$B$9", workbook.getName("fabric_fault").getRefersToFormula());
    assertEquals(-1, workbook.getName("tape").getSheetIndex());
  }

  @Test
  void aGuardedLineIsBlankWhileItsGuardIsNotOne() {
    XSSFWorkbook workbook = Bunting.compiled(LengthUnit.INCH);
    assertEquals(
        "IF(plan_ok=1,INT(tape/flag_width),\"\")",
        workbook.getSheet("Brief").getRow(10).getCell(1).getCellFormula());
  }

  @Test
  void whereRowsHaveAConditionTheFirstColumnCarriesItAndTheOthersLookAtIt() {
    XSSFWorkbook workbook = Bunting.compiled(LengthUnit.INCH);
    List<String> formulas =
        List.of(0, 1).stream()
            .map(column -> workbook.getSheet("Flag by flag").getRow(5).getCell(column))
            .map(XSSFCell::getCellFormula)
            .toList();
    assertEquals(
        List.of(
            "IF(plan_ok=1,IF(((ROW()-ROW($A$4)))<=flag_count,(ROW()-ROW($A$4)),\"\"),\"\")",
            "IF($A6=\"\",\"\",IF($A6=1,bare_tape,SUM($C5)))"),
        formulas);
  }

  @Test
  void whereRowsHaveNoConditionEveryCellCarriesTheGuard() {
    String sheet =
        """
        sheet: A
        title: T
        widths: [9, 9, 9, 9, 9]
        rows:
          - {line: plan_ok, label: P, unit: "-", format: flag, guard: none, formula: "1", note: N.}
          - table: steps
            rows: 2
            columns:
              - {column: step, label: S, unit: "-", format: count, formula: "{n}", note: N.}
              - {column: twice, label: T, unit: "-", format: count, formula: "2*[step]", note: N.}
              - {column: late, label: L, unit: "-", format: count, formula: "7", guard: plan_ok, note: N.}
        """;
    Map<String, String> files =
        Map.of("workbook.yaml", "title: T\nsheets: [a.yaml]", "a.yaml", sheet);
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(
            workbook,
            TemplateReader.read(file -> Optional.ofNullable(files.get(file))),
            new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
    assertEquals("A!$B$5:$B$6", workbook.getName("twice").getRefersToFormula());
    XSSFRow second = workbook.getSheet("A").getRow(5);
    assertEquals("IF(plan_ok=1,2,\"\")", second.getCell(0).getCellFormula());
    assertEquals("IF(plan_ok=1,2*$A6,\"\")", second.getCell(1).getCellFormula());
    assertEquals("IF(plan_ok=1,IF(plan_ok=1,7,\"\"),\"\")", second.getCell(2).getCellFormula());
  }

  @Test
  void aSettingFillsTheInputs() {
    WorkbookValues values =
        new WorkbookValues(
            Bunting.compiled(LengthUnit.INCH, Map.of("tape", 65.0, "shape", "swallowtail")));
    values.recalculate();
    assertEquals(10.0, values.value("flag_count"));
    assertEquals(1.0, values.value("lined"));
  }

  @Test
  void aChangedInputIsFollowed() {
    inch.set("flag_width", 10.0);
    inch.recalculate();
    is(10.0, "flag_count");
    is(0.0, "bare_tape");
    inch.set("flag_width", 6.5);
    inch.recalculate();
    is(15.0, "flag_count");
  }
}
