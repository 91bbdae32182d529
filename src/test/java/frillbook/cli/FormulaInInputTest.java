package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.client.PlanFile;
import frillbook.reading.PackagedTemplates;
import frillbook.template.Form;
import frillbook.template.WorkbookTemplate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A person has put a formula where frillbook asks for a value. Expected: what was typed instead.
 */
class FormulaInInputTest {
  /** A function that no program has. */
  private static final String UNKNOWN = "NOSUCHFUNCTION(3)";

  private static final String QUANTITY = "Brief!B6";

  private static final String REMEDY =
      " Open and save the plan in a spreadsheet program, or type the value in place of the formula.";

  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  @TempDir private static Path folder;

  private static Typed made;

  @TempDir private Path own;

  @BeforeAll
  static void makeAPlan() {
    made = Typed.made(folder, Ran.SMALL);
  }

  private Typed small() throws IOException {
    return new Typed(Files.copy(made.plan(), own.resolve("plan.xlsx")));
  }

  private static Object read(String input, Typed plan) {
    return PlanFile.read(plan.plan(), Form.of(TEMPLATE)).inputs().get(input);
  }

  private static void isRefused(Typed plan, String sentence) {
    assertEquals(
        Ran.refusal(1, plan.plan() + " has inputs that cannot be used.", sentence), plan.client());
    assertTrue(Files.notExists(plan.page()));
  }

  /** 2 · 20 + 8 = 48 a yard. */
  @Test
  void aPriceWithoutASavedValueIsCalculated() throws IOException {
    Typed plan = small().withFormula("price_frill_fabric", "2*20+8");
    assertEquals(48.0, read("price_frill_fabric", plan));
  }

  /** 6 + 1 cushions, the 6 typed into another input since the plan was made. */
  @Test
  void whatAFormulaReadsIsTakenAsItNowStands() throws IOException {
    Typed plan = small().with(Map.of("diameter", 6.0)).withFormula("quantity", "diameter+1");
    assertEquals(7.0, read("quantity", plan));
  }

  @Test
  void wordsWithoutASavedValueAreCalculated() throws IOException {
    Typed plan = small().withFormula("client_name", "\"the \"&(1+2)&\" rooms\"");
    assertEquals("the 3 rooms", read("client_name", plan));
  }

  @Test
  void aSavedValueThatIsRightIsTaken() throws IOException {
    assertEquals(7.0, read("quantity", saved("3+4", cell -> cell.setCellValue(7))));
  }

  /** 7 · 10⁻⁹ is what may lie between; programs add up in ways of their own. */
  @Test
  void aSavedValueMayDifferInItsLastFigures() throws IOException {
    Typed plan = saved("3+4", cell -> cell.setCellValue(7.000000001));
    assertEquals(7.0, read("quantity", plan));
  }

  @Test
  void aSavedValueThatIsNoLongerRightIsRefused() throws IOException {
    isRefused(
        saved("3+4", cell -> cell.setCellValue(5)),
        QUANTITY + ": its formula comes to \"7\", but \"5\" was saved." + REMEDY);
  }

  @Test
  void aSavedErrorIsRefused() throws IOException {
    isRefused(
        saved("3+4", cell -> cell.setCellErrorValue(FormulaError.NAME)),
        QUANTITY + ": its formula comes to \"7\", but \"#NAME?\" was saved." + REMEDY);
  }

  @Test
  void anErrorIsRefused() throws IOException {
    isRefused(
        small().withFormula("quantity", "3/0"),
        QUANTITY + ": found \"#DIV/0!\". “Cushions” must be a whole number from 1 to 50.");
  }

  @Test
  void aFormulaThatNeedsItsOwnCellIsRefused() throws IOException {
    isRefused(
        small().withFormula("quantity", "quantity+1"),
        QUANTITY + ": found \"~CIRCULAR~REF~\". “Cushions” must be a whole number from 1 to 50.");
  }

  @Test
  void whatCannotBeCalculatedAndHasNoValueIsRefused() throws IOException {
    isRefused(
        small().withFormula("quantity", UNKNOWN),
        QUANTITY + ": its formula cannot be calculated here, and no value was saved." + REMEDY);
  }

  @Test
  void whatCannotBeCalculatedButWasSavedIsTaken() throws IOException {
    assertEquals(7.0, read("quantity", saved(UNKNOWN, cell -> cell.setCellValue(7))));
  }

  @Test
  void anEmptyValueIsNone() throws IOException {
    isRefused(
        saved(UNKNOWN, cell -> cell.getCTCell().setV("")),
        QUANTITY + ": its formula cannot be calculated here, and no value was saved." + REMEDY);
  }

  @Test
  void aNumberWithNothingInItIsNothing() throws IOException {
    isRefused(
        small().withSavedValue("quantity", cell -> cell.getCTCell().setV("")),
        QUANTITY + ": found nothing. “Cushions” must be a whole number from 1 to 50.");
  }

  @Test
  void aCellThatIsNoLongerThereIsNothing() throws IOException {
    isRefused(
        small().withSavedValue("quantity", cell -> cell.getRow().removeCell(cell)),
        QUANTITY + ": found nothing. “Cushions” must be a whole number from 1 to 50.");
  }

  private Typed saved(String formula, Consumer<XSSFCell> value) throws IOException {
    return small().withFormula("quantity", formula, value);
  }
}
