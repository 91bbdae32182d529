package frillbook.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.calculation.WorkbookValues;
import frillbook.chart.Bunting;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.workbook.WorkbookCompiler;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A template compiled into a workbook that a person already has. */
final class AddedSheetsTest {
  private static void compileInto(XSSFWorkbook workbook, Map<String, Object> inputs) {
    new WorkbookCompiler()
        .compileInto(
            workbook, Bunting.TEMPLATE, new WorkbookSetting(LengthUnit.INCH, inputs, Paper.LETTER));
  }

  @Test
  void sheetsAreAddedBehindThoseThatAreThere() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      var orders = workbook.createSheet("Orders").createRow(0).createCell(0);
      orders.setCellValue("mine");
      String font = orders.getCellStyle().getFont().getFontName();
      compileInto(workbook, Map.of());
      WorkbookValues values = new WorkbookValues(workbook);
      values.recalculate();
      assertEquals(
          List.of("Orders", "Brief", "Flag by flag", "Checks", "Words"),
          IntStream.range(0, 5).mapToObj(workbook::getSheetName).toList());
      assertEquals("mine", workbook.getSheetAt(0).getRow(0).getCell(0).getStringCellValue());
      assertEquals(font, orders.getCellStyle().getFont().getFontName());
      assertEquals(15.0, values.value("flag_count"), values.where("flag_count"));
    }
  }

  @Test
  void sheetsAndNamesThatAreThereAreToldAndNothingIsWritten() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("Checks");
      var name = workbook.createName();
      name.setNameName("tape");
      name.setRefersToFormula("Checks!$A$1");
      IllegalArgumentException told =
          assertThrows(IllegalArgumentException.class, () -> compileInto(workbook, Map.of()));
      assertEquals("the workbook already has the sheet Checks, the name tape", told.getMessage());
      assertEquals(1, workbook.getNumberOfSheets());
    }
  }

  @Test
  void anInputTheTemplateDoesNotHaveIsTold() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      IllegalArgumentException told =
          assertThrows(
              IllegalArgumentException.class,
              () -> compileInto(workbook, Map.of("tapes", 3.0, "tape", 50.0)));
      assertEquals("the template has no input named tapes", told.getMessage());
    }
  }

  @Test
  void aSheetPrintsOnePageWideWithItsTableHeadRepeated() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      compileInto(workbook, Map.of());
      var flags = workbook.getSheet("Flag by flag");
      assertEquals(1, flags.getPrintSetup().getFitWidth());
      assertEquals(0, flags.getPrintSetup().getFitHeight());
      assertEquals(Paper.LETTER.code(), flags.getPrintSetup().getPaperSize());
      assertEquals(true, flags.getPrintSetup().getLandscape());
      assertEquals("3:4", flags.getRepeatingRows().formatAsString());
      assertEquals(4, flags.getPaneInformation().getHorizontalSplitPosition());
    }
  }
}
