package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** The words beside the currency are set off while it cannot be used, as Apache POI judges. */
final class CurrencyAlarmTest {
  private static final int NOTE_COLUMN = 4;

  private static int looks(XSSFWorkbook workbook, XSSFCell currency, String code) {
    currency.setCellValue(code);
    return new ConditionalFormattingEvaluator(workbook, new XSSFFormulaEvaluator(workbook))
        .getConditionalFormattingForCell(currency.getRow().getCell(NOTE_COLUMN))
        .size();
  }

  @Test
  void theRefusalOfACurrencyIsSetOff() throws IOException {
    try (XSSFWorkbook workbook = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.CM)) {
      XSSFCell currency = SheetValues.stored(workbook).cells("currency_code").get(0);
      assertEquals(1, looks(workbook, currency, "usd"));
      assertEquals(0, looks(workbook, currency, "KWD"));
      assertEquals(1, looks(workbook, currency, "XAU"));
    }
  }
}
