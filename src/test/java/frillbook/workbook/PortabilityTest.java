package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.chart.Bunting;
import frillbook.formula.PortableFunctions;
import frillbook.measure.LengthUnit;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;

final class PortabilityTest {
  private static final Pattern FUNCTION = Pattern.compile("([A-Z][A-Z0-9.]*)\\(");
  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");

  @Test
  void compiledFormulasUseOnlyPortableFunctions() {
    Set<String> used = new TreeSet<>();
    for (XSSFCell cell : Bunting.calculated(LengthUnit.INCH).formulaCells()) {
      Matcher function = FUNCTION.matcher(TEXT.matcher(cell.getCellFormula()).replaceAll(""));
      while (function.find()) {
        used.add(function.group(1));
      }
    }
    assertTrue(used.contains("IF") && used.contains("ISNUMBER"), used.toString());
    used.removeAll(PortableFunctions.names());
    assertEquals(Set.of(), used);
  }

  @Test
  void noTextBetweenQuotationMarksIsLongerThanExcelTakes() {
    String text = FormulaTranslation.text("a \"quoted\" word, ".repeat(40));
    Matcher part = Pattern.compile("\"((?:[^\"]|\"\")*)\"").matcher(text);
    int parts = 0;
    while (part.find()) {
      parts++;
      assertTrue(part.group(1).replace("\"\"", "\"").length() <= 255, part.group(1));
    }
    assertTrue(parts > 1, text);
  }
}
