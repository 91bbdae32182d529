package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.look.Contrast;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Colours in the file as it is made. */
final class FlagColoursTest {
  /** Of text that is not large (WCAG 2.1, 1.4.3). */
  private static final double READABLE = 4.5;

  private static XSSFWorkbook workbook;

  @BeforeAll
  static void open() throws IOException {
    byte[] file = PressedFile.of(TrialBrief.preset(Trials.TEMPLATE, Trials.INCH));
    workbook = new XSSFWorkbook(new ByteArrayInputStream(file));
  }

  @AfterAll
  static void close() throws IOException {
    workbook.close();
  }

  private static XSSFCell cell(String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static Stream<XSSFConditionalFormatting> formattings(XSSFSheet sheet) {
    XSSFSheetConditionalFormatting all = sheet.getSheetConditionalFormatting();
    return Stream.iterate(0, i -> i + 1)
        .limit(all.getNumConditionalFormattings())
        .map(all::getConditionalFormattingAt);
  }

  /** Colours behind the words of a cell and of the words, by condition. */
  private static Map<String, String> looks(XSSFSheet sheet, CellAddress at) {
    Map<String, String> looks = new LinkedHashMap<>();
    formattings(sheet)
        .filter(
            each ->
                Stream.of(each.getFormattingRanges())
                    .anyMatch(range -> range.isInRange(at.getRow(), at.getColumn())))
        .forEach(
            each -> {
              for (int i = 0; i < each.getNumberOfRules(); i++) {
                ConditionalFormattingRule rule = each.getRule(i);
                looks.put(rule.getFormula1(), letters(rule) + " on " + ground(rule));
              }
            });
    return looks;
  }

  private static String letters(ConditionalFormattingRule rule) {
    return hex((XSSFColor) rule.getFontFormatting().getFontColor()).orElse("000000");
  }

  private static String ground(ConditionalFormattingRule rule) {
    return rule.getPatternFormatting() == null
        ? "FFFFFF"
        : hex((XSSFColor) rule.getPatternFormatting().getFillBackgroundColorColor()).orElseThrow();
  }

  private static Optional<String> hex(XSSFColor colour) {
    return Optional.ofNullable(colour)
        .map(XSSFColor::getARGBHex)
        .map(argb -> argb.substring(argb.length() - 6));
  }

  @Test
  void theFlagIsWhiteOnAGroundOfItsOwn() {
    XSSFCell flag = cell("check_flag");
    String at = "$B" + (flag.getRowIndex() + 1);
    assertEquals(
        Map.of(
            at + "=\"READY\"",
            "FFFFFF on 1F6B45",
            at + "=\"LOOK AGAIN\"",
            "FFFFFF on 8A5A00",
            at + "=\"STOP\"",
            "FFFFFF on 8B1E0F"),
        looks(flag.getSheet(), flag.getAddress()));
  }

  @Test
  void faultsAreWhiteOnTheSame() {
    XSSFCell fault = cell("rows_cover_base");
    assertEquals(
        List.of("FFFFFF on 8B1E0F", "FFFFFF on 8A5A00"),
        List.copyOf(looks(fault.getSheet(), fault.getAddress()).values()));
  }

  @Test
  void anInputIsCreamInAHeavyFrameWithBoldFigures() {
    XSSFCellStyle style = cell("fullness").getCellStyle();
    assertEquals("FFEFB8", hex(style.getFillForegroundColorColor()).orElseThrow());
    assertEquals("1F3F7A", hex(style.getFont().getXSSFColor()).orElseThrow());
    assertTrue(style.getFont().getBold());
    assertEquals(BorderStyle.MEDIUM, style.getBorderLeft());
    assertEquals("7A5E12", hex(style.getLeftBorderXSSFColor()).orElseThrow());
  }

  @Test
  void everyStyleOfACellIsReadable() {
    for (int i = 0; i < workbook.getNumCellStyles(); i++) {
      XSSFCellStyle style = workbook.getCellStyleAt(i);
      String ground =
          style.getFillPattern() == FillPatternType.SOLID_FOREGROUND
              ? hex(style.getFillForegroundColorColor()).orElseThrow()
              : "FFFFFF";
      String letters = hex(style.getFont().getXSSFColor()).orElse("000000");
      double ratio = Contrast.ratio(letters, ground);
      assertTrue(ratio >= READABLE, letters + " on " + ground + ": " + ratio);
    }
    assertTrue(workbook.getNumCellStyles() > 20, workbook.getNumCellStyles() + " styles");
  }

  @Test
  void everyStyleThatFollowsValuesIsReadable() {
    int tried = 0;
    for (XSSFSheet sheet : List.of(workbook.getSheet("Brief"), workbook.getSheet("Checks"))) {
      for (XSSFConditionalFormatting each : formattings(sheet).toList()) {
        for (int i = 0; i < each.getNumberOfRules(); i++) {
          ConditionalFormattingRule rule = each.getRule(i);
          if (rule.getFontFormatting() != null) {
            double ratio = Contrast.ratio(letters(rule), ground(rule));
            assertTrue(ratio >= READABLE, letters(rule) + " on " + ground(rule) + ": " + ratio);
            tried++;
          }
        }
      }
    }
    assertTrue(tried > 10, tried + " rules");
  }
}
