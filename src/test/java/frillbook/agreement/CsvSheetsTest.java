package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvSheetsTest {
  @Test
  void numbersTextsAndBlanksAreToldApart() {
    assertEquals(
        List.of(List.of(1.5, "1.5", "", ""), List.of("a, \"b\"\nc", -2e-7, .125)),
        CsvSheets.rows("1.5,\"1.5\",,\"\"\n\"a, \"\"b\"\"\nc\",-2E-7,12.5%\n"));
  }

  /** A quoted text that reads like an error stays a text. */
  @Test
  void anErrorIsNotQuoted() {
    List<Object> row = CsvSheets.rows("#DIV/0!,\"#DIV/0!\",Err:502,cushion\n").get(0);
    assertEquals("[#DIV/0!, #DIV/0!, Err:502, cushion]", row.toString());
    assertEquals(
        List.of(false, true, false, true), row.stream().map(String.class::isInstance).toList());
  }
}
