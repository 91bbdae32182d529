package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Cells that a maker writes words into. */
final class WordsTypedTest {
  /** The columns of a maker's words, B to D. */
  private static final List<Integer> COLUMNS = List.of(1, 2, 3);

  private static XSSFWorkbook workbook;

  @BeforeAll
  static void compile() {
    workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(
            workbook,
            TemplateReader.read(TemplateSource.packaged()),
            new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
  }

  private static CellReference cell(String input) {
    return new CellReference(workbook.getName(input).getRefersToFormula());
  }

  private static XSSFSheet sheet(CellReference cell) {
    return workbook.getSheet(cell.getSheetName());
  }

  private static XSSFCellStyle style(CellReference cell, int column) {
    return sheet(cell).getRow(cell.getRow()).getCell(column).getCellStyle();
  }

  @Test
  void wordsHaveThreeColumnsToThemselves() {
    CellReference contact = cell("maker_contact_words");
    int row = contact.getRow();
    assertTrue(
        sheet(contact).getMergedRegions().contains(new CellRangeAddress(row, row, 1, 3)),
        sheet(contact).getMergedRegions().toString());
  }

  /** In a protected sheet a merged cell is typed into only if all of it may be. */
  @Test
  void allOfTheirCellMayBeTypedInto() {
    for (int column : COLUMNS) {
      assertFalse(style(cell("maker_contact_words"), column).getLocked(), "column " + column);
    }
  }

  @Test
  void theirFrameGoesAllTheWayRound() {
    XSSFCellStyle last = style(cell("maker_contact_words"), 3);
    assertEquals(BorderStyle.MEDIUM, last.getBorderRight());
    for (int column : COLUMNS) {
      XSSFCellStyle style = style(cell("maker_contact_words"), column);
      assertEquals(BorderStyle.MEDIUM, style.getBorderTop(), "column " + column);
      assertEquals(BorderStyle.MEDIUM, style.getBorderBottom(), "column " + column);
    }
  }

  /** Column D, where the note of a number begins, belongs to the words. */
  @Test
  void theirNoteStandsBehindThem() {
    CellReference contact = cell("maker_contact_words");
    String note = sheet(contact).getRow(contact.getRow()).getCell(4).getCellFormula();
    assertTrue(note.contains("Telephone, address or web page."), note);
  }

  /** H2 of the client's page, beside the word Date in G2. */
  @Test
  void aDateMayBeTypedOnTheClientsPage() {
    var row = workbook.getSheet("Client").getRow(1);
    assertTrue(row.getCell(6).getCellFormula().contains("Date"), row.getCell(6).toString());
    assertFalse(row.getCell(7).getCellStyle().getLocked());
    assertTrue(row.getCell(6).getCellStyle().getLocked());
  }
}
