package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.calculation.WorkbookValues;
import frillbook.chart.Bunting;
import frillbook.measure.LengthUnit;
import frillbook.template.InputTemplate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person sees after typing something that cannot be used. */
final class UnusableInputTest {
  private final XSSFWorkbook workbook = Bunting.compiled(LengthUnit.INCH);
  private final WorkbookValues values = new WorkbookValues(workbook);

  static List<InputTemplate> inputs() {
    return Bunting.TEMPLATE.inputs();
  }

  private void type(InputTemplate input, Object value) {
    values.set(input.name(), value);
    values.recalculate();
  }

  private void refused(InputTemplate input) {
    String limits = input.limits(Bunting.TEMPLATE.phrases(), LengthUnit.INCH);
    String place = " (" + values.where(input.name()).replace("!", " ") + ")";
    String sentence = input.label() + " " + limits + place;
    assertTrue(values.column("check_sentence").contains(sentence), sentence);
    assertEquals(limits, note(input), values.where(input.name()));
    assertEquals(0.0, values.value("plan_ok"), values.where("plan_ok"));
    assertEquals("", values.value("flag_count"), values.where("flag_count"));
    assertEquals(List.of(), values.errors());
  }

  /** The value of the cell in column D of the input's row. */
  private Object note(InputTemplate input) {
    String note = values.where(input.name()).replace("!B", "!D");
    return values.formulaCells().stream()
        .filter(cell -> WorkbookValues.where(cell).equals(note))
        .map(values::value)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("inputs")
  void aBlankCellIsRefused(InputTemplate input) {
    type(input, null);
    refused(input);
  }

  @ParameterizedTest
  @MethodSource("inputs")
  void aTextIsRefused(InputTemplate input) {
    type(input, "about a yard");
    refused(input);
  }

  @ParameterizedTest
  @MethodSource("inputs")
  void aNumberFarOffIsRefused(InputTemplate input) {
    type(input, -1e9);
    refused(input);
  }

  @Test
  void aFractionOfACountIsRefused() {
    InputTemplate sets = inputs().get(2);
    type(sets, 2.5);
    refused(sets);
  }

  @Test
  void bothEndsOfARangeAreFine() {
    InputTemplate width = inputs().get(1);
    for (double end : List.of(2.0, 20.0)) {
      type(width, end);
      assertEquals(0.0, values.column("input_fault").get(1), values.where("input_fault"));
      assertEquals("Along the tape, finished, not cut; in in.", note(width));
    }
  }

  @Test
  void checksOfThePlanWaitForTheInputs() {
    type(inputs().get(0), null);
    assertEquals("not checked yet", values.column("check_sentence").get(0));
  }

  @Test
  void aStopIsOneAndASecondLookIsTwo() {
    values.set("tape", 15.0);
    values.set("flag_width", 20.0);
    values.recalculate();
    // 15 in takes no flag of 20 in, and all of it stays bare.
    assertEquals(List.of(1.0, 2.0), values.column("check_fault").subList(0, 2));
    assertEquals(
        "The tape is shorter than one flag is wide. Take a longer tape or narrower flags, in in.",
        values.column("check_sentence").get(0));
    assertEquals(List.of(), values.errors());
  }

  @Test
  void everyInputHasARuleWithARefusal() {
    var rules = workbook.getSheet("Brief").getDataValidations();
    assertEquals(6, rules.size());
    assertEquals(
        "“Tape between the hooks” must be a number from 10 to 400 in.",
        rules.get(0).getErrorBoxText());
  }

  @Test
  void onlyInputsCanBeTypedInto() {
    var brief = workbook.getSheet("Brief");
    assertTrue(brief.getProtect());
    assertEquals(false, brief.getRow(3).getCell(1).getCellStyle().getLocked());
    assertEquals(true, brief.getRow(10).getCell(1).getCellStyle().getLocked());
  }
}
