package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<c r=\"AB12\" s=\"7\"/> | <c r=\"AB12\" s=\"7\"/>",
        "<c r=\"A1\" s=\"7\" t=\"str\"><f>B1</f></c> | <c s=\"7\" r=\"A1\" t=\"str\"><f>B1</f></c>",
        "<c r=\"A1\"><v>3</v></c> | <c r=\"A1\"><v>3</v></c>",
        "<c r=\"A1\" s=\"7\"><f>B1</f></c> | <c s=\"7\" r=\"A1\"><f>B1</f></c>"
      })
  void theLookOfACalculatedCellStandsBeforeItsPlace(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<row r=\"9\" customHeight=\"true\" ht=\"15.5\"> | <row r=\"9\" ht=\"15.5\" customHeight=\"1\">",
        "<row r=\"9\"> | <row r=\"9\">",
      })
  void theHeightOfARowStandsBesideItsPlace(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<pane ySplit=\"3.0\" state=\"frozen\" activePane=\"bottomLeft\"/><selection pane=\"bottomLeft\"/> | <pane ySplit=\"3\" state=\"frozen\"/>",
        "<pane ySplit=\"3.5\"/><selection pane=\"bottomLeft\"/> | <pane ySplit=\"3.5\"/><selection pane=\"bottomLeft\"/>",
      })
  void aFrozenPaneNeedsNoSelection(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<col width=\"9\"></col> | <col width=\"9\"/>",
        "<f></f> | <f/>",
        "<f>B1</f> | <f>B1</f>",
        "<row r=\"1\"><c r=\"A1\"></c></row> | <row r=\"1\"><c r=\"A1\"/></row>"
      })
  void whatHoldsNothingIsEndedAtOnce(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<dataValidation errorStyle=\"stop\" type=\"whole\" operator=\"between\"> | <dataValidation type=\"whole\">",
        "<dataValidation type=\"list\" showDropDown=\"false\"> | <dataValidation type=\"list\">",
        "<dataValidation errorStyle=\"warning\"> | <dataValidation errorStyle=\"warning\">",
        "<cfRule operator=\"between\"> | <cfRule operator=\"between\">",
      })
  void whatHoldsAnywayIsLeftOut(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<brk man=\"true\" id=\"2\"/> | <brk man=\"1\" id=\"2\"/>",
        "<sheetProtection sheet=\"true\" formatRows=\"false\"/> | <sheetProtection sheet=\"1\" formatRows=\"0\"/>",
        "<f>IF( A=\"true\",1,2)</f> | <f>IF( A=\"true\",1,2)</f>",
      })
  void yesAndNoAreOneAndNought(String sheet, String brief) {
    assertEquals(brief, SheetText.brief(sheet));
  }
}
