package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.Written;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/**
 * Title and line stand in rows 1 and 2; the second and the fourth step, rows 4 and 7, are empty.
 */
final class EmptyStepTest {
  private static final String ROWS =
      """
        - line: people
          label: L
          unit: "-"
          format: count
          guard: none
          formula: "2"
          note: N.
        - step: "Cut {people, plural, one {a strip} other {# strips}}."
          guard: none
        - step: "{people, plural, =2 {} other {Join the strips.}}"
          guard: none
        - section: Sew
        - step: "Sew."
          guard: none
        - step: "{people, plural, =2 {} other {Sew again.}}"
          guard: none
      """;

  /** Rows of the sheet, from 1, in which that column is hidden. */
  private static List<Integer> hidden(XSSFWorkbook workbook, int column) {
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
    evaluator.evaluateAll();
    var rules = new ConditionalFormattingEvaluator(workbook, evaluator);
    return IntStream.rangeClosed(1, 12)
        .filter(
            row ->
                !rules
                    .getConditionalFormattingForCell(
                        new CellReference("A", row - 1, column, true, true))
                    .isEmpty())
        .boxed()
        .toList();
  }

  @Test
  void itsNumberAndItsBoxAreNotSeen() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(
            workbook, Written.read(ROWS), new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
    assertEquals(List.of(4, 7), hidden(workbook, 0));
    assertEquals(List.of(4, 7), hidden(workbook, 1));
  }
}
