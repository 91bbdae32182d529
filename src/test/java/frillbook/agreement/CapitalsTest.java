package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;

/**
 * A spreadsheet does not tell capitals from small letters, and so a choice may be typed in either.
 */
final class CapitalsTest {
  private static List<Object> numbers(TrialBrief brief) {
    SheetValues sheet = Trials.given(brief);
    List<Object> numbers = new ArrayList<>();
    for (XSSFCell cell : Trials.workbook(brief.unit()).formulaCells()) {
      Object value = sheet.value(cell);
      numbers.add(value instanceof Double ? value : "words");
    }
    return numbers;
  }

  @Test
  void aWordInCapitalsIsTheSameChoice() {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
    List<Object> small = numbers(preset);
    assertEquals(small, numbers(preset.with("join_finish", "FRENCH").with("grain", "Crosswise")));
    assertTrue(!small.equals(numbers(preset.with("join_finish", "plain"))), "another choice");
  }
}
