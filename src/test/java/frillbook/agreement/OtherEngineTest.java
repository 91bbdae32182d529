package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Engine and workbook, calculated by another program from files without values, say the same. */
abstract class OtherEngineTest {
  /** A program takes seconds for a file. */
  private static final int EVERY_NTH_UNUSED = 17;

  @TempDir Path folder;

  /** The program, told a folder for what it prints. */
  abstract Calculator calculator(Path printed);

  /** What it must agree on. */
  abstract List<TrialBrief> briefs();

  /** How many briefs with a cell that cannot be used are one too many to try. */
  abstract int everyNthUnusable();

  final CalculatedFiles calculated() {
    return new CalculatedFiles(calculator(folder));
  }

  @BeforeEach
  final void skipWhereItIsAbsent() {
    calculator(folder).program().requireOrSkip();
  }

  static Stream<TrialBrief> some(List<TrialBrief> all, int everyNth) {
    return IntStream.range(0, all.size()).filter(i -> i % everyNth == 0).mapToObj(all::get);
  }

  @Test
  final void itAgreesWithTheEngine() throws Exception {
    Findings findings = calculated().compare(briefs());
    findings.requireAgreement();
    assertEquals(briefs().size(), findings.briefs());
  }

  @Test
  final void moneyIsRoundedAsByHand() throws Exception {
    List<CoinBrief> coins = CoinBrief.all();
    List<SheetValues> sheets = calculated().of(coins.stream().map(CoinBrief::brief).toList());
    for (int i = 0; i < sheets.size(); i++) {
      coins.get(i).requireIn(sheets.get(i));
    }
    assertEquals(12, sheets.size());
  }

  @Test
  final void everyCurrencyIsKnownWithItsPlaces() throws Exception {
    CurrencySheet sheet = CurrencySheet.of();
    sheet.requireIn(calculated().of(sheet.workbook()));
  }

  @Test
  final void aCellThatCannotBeUsedLeavesNoError() throws Exception {
    List<TrialBrief> briefs = some(RefusalTest.unusable(), everyNthUnusable()).toList();
    List<SheetValues> sheets = calculated().of(briefs);
    for (int i = 0; i < sheets.size(); i++) {
      SheetValues sheet = sheets.get(i);
      assertEquals(List.of(), sheet.errors(), briefs.get(i).toString());
      assertEquals("STOP", sheet.value("check_flag"), briefs.get(i).toString());
      assertEquals(List.of("", "", ""), sheet.column("client_choice"), briefs.get(i).toString());
      boolean cuts = !RefusalTest.needed("cut_ok").contains(part(briefs.get(i)));
      assertEquals(cuts, !sheet.value("buy_length").equals(""), briefs.get(i).toString());
    }
    assertTrue(sheets.size() >= 5, "files");
  }

  /** The part of the work of the one input that is changed. */
  private static String part(TrialBrief brief) {
    String name = brief.changes().keySet().iterator().next();
    return Trials.TEMPLATE.inputs().stream()
        .filter(input -> input.name().equals(name))
        .map(input -> input.use().part())
        .findFirst()
        .orElseThrow();
  }

  @Test
  final void aCellThatIsNotUsedLeavesNoError() throws Exception {
    List<TrialBrief> briefs = some(UnusedCellsTest.left(), EVERY_NTH_UNUSED).toList();
    List<SheetValues> sheets = calculated().of(briefs);
    for (int i = 0; i < sheets.size(); i++) {
      SheetValues sheet = sheets.get(i);
      assertEquals(List.of(), sheet.errors(), briefs.get(i).toString());
      assertEquals("READY", sheet.value("check_flag"), briefs.get(i).toString());
    }
    assertTrue(sheets.size() >= 5, "files");
  }

  /** The comparison of the program's files can fail too. */
  @Test
  final void aWrongFormulaIsFound() throws Exception {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    XSSFWorkbook wrong = TrialWorkbook.compiled(Trials.TEMPLATE, brief.unit());
    SheetValues.stored(wrong).cells("area_rule_length").get(0).setCellFormula("1+1");
    SheetValues sheet = calculated().of(wrong);
    List<Difference> found = Comparison.of(Trials.TEMPLATE, brief, sheet).differences();
    assertEquals(List.of("area_rule_length"), found.stream().map(Difference::name).toList());
    assertEquals(2.0, found.get(0).sheet());
  }

  /** A sentence has no name; it is found by its place. */
  @Test
  final void aSentenceThatReadsOtherwiseIsFound() throws Exception {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    XSSFWorkbook wrong = TrialWorkbook.compiled(Trials.TEMPLATE, brief.unit());
    wrong.getSheet("Client").getRow(2).getCell(0).setCellFormula("project_title&0");
    SheetValues sheet = calculated().of(wrong);
    List<Difference> found = Comparison.of(Trials.TEMPLATE, brief, sheet).differences();
    assertEquals(List.of("Client!A3"), found.stream().map(Difference::where).toList());
  }
}
