package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Engine and workbook, calculated by another program from files without values, say the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class OtherEngineTest {
  /** A program takes seconds for a file. */
  private static final int EVERY_NTH_UNUSED = 17;

  @TempDir static Path folder;

  private final CurrencySheet currencies = CurrencySheet.of();

  private CalculatedFiles calculated;

  /** The program, told a folder for what it prints. */
  abstract Calculator calculator(Path printed);

  /** What it must agree on. */
  abstract List<TrialBrief> briefs();

  /** How many briefs with a cell that cannot be used are one too many to try. */
  abstract int everyNthUnusable();

  @BeforeAll
  final void calculate() throws Exception {
    Calculator calculator = calculator(folder);
    calculator.program().requireOrSkip();
    List<TrialBrief> all =
        Stream.of(briefs(), coins(), unusable(), unused())
            .flatMap(List::stream)
            .distinct()
            .toList();
    calculated = CalculatedFiles.of(calculator, all, List.of(wrong(), currencies.workbook()));
  }

  private SheetValues sheet(TrialBrief brief) {
    return calculated.briefs().get(brief);
  }

  /** The presets, but a line and a sentence of it say something else. */
  private static XSSFWorkbook wrong() {
    XSSFWorkbook wrong = TrialWorkbook.compiled(Trials.TEMPLATE, Trials.CM);
    SheetValues.stored(wrong).cells("stitches_per_cm").get(0).setCellFormula("1+1");
    wrong.getSheet("Client").getRow(2).getCell(0).setCellFormula("project_title&0");
    return wrong;
  }

  private static List<CoinBrief> coinBriefs() {
    return Sample.of(CoinBrief.all(), 6);
  }

  private static List<TrialBrief> coins() {
    return coinBriefs().stream().map(CoinBrief::brief).toList();
  }

  private List<TrialBrief> unusable() {
    return Sample.of(some(RefusalTest.unusable(), everyNthUnusable()).toList(), 4);
  }

  private static List<TrialBrief> unused() {
    return Sample.of(some(UnusedCellsTest.left(), EVERY_NTH_UNUSED).toList(), 3);
  }

  static Stream<TrialBrief> some(List<TrialBrief> all, int everyNth) {
    return Sample.every(all, everyNth).stream();
  }

  @Test
  final void itAgreesWithTheEngine() {
    Findings findings = calculated.compare(briefs());
    System.out.println(calculator(folder).program().command() + ": " + findings);
    findings.requireAgreement();
    assertEquals(briefs().size(), findings.briefs());
  }

  @Test
  final void moneyIsRoundedAsByHand() {
    coinBriefs().forEach(coin -> coin.requireIn(sheet(coin.brief())));
    assertEquals(13, CoinBrief.all().size());
  }

  @Test
  final void everyCurrencyIsKnownWithItsPlaces() {
    currencies.requireIn(calculated.others().get(1));
  }

  @Test
  final void aCellThatCannotBeUsedLeavesNoError() {
    List<TrialBrief> briefs = unusable();
    for (int i = 0; i < briefs.size(); i++) {
      SheetValues sheet = sheet(briefs.get(i));
      assertEquals(List.of(), sheet.errors(), briefs.get(i).toString());
      assertEquals("STOP", sheet.value("check_flag"), briefs.get(i).toString());
      assertEquals("", sheet.value("two_look"), briefs.get(i).toString());
      boolean cuts = !RefusalTest.needed("cut_ok").contains(part(briefs.get(i)));
      assertEquals(cuts, !sheet.value("buy_length").equals(""), briefs.get(i).toString());
    }
    assertTrue(briefs.size() >= (Sample.isWhole() ? 5 : 2), "briefs");
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
  final void aCellThatIsNotUsedLeavesNoError() {
    List<TrialBrief> briefs = unused();
    for (int i = 0; i < briefs.size(); i++) {
      SheetValues sheet = sheet(briefs.get(i));
      assertEquals(List.of(), sheet.errors(), briefs.get(i).toString());
      assertEquals("READY", sheet.value("check_flag"), briefs.get(i).toString());
    }
    assertTrue(briefs.size() >= (Sample.isWhole() ? 5 : 2), "briefs");
  }

  /** The comparison of the program's files can fail too. A sentence is found by its place. */
  @Test
  final void aWrongFormulaAndASentenceThatReadsOtherwiseAreFound() {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    SheetValues sheet = calculated.others().get(0);
    List<Difference> found = Comparison.of(Trials.TEMPLATE, brief, sheet).differences();
    assertEquals(List.of("stitches_per_cm", "Said"), found.stream().map(Difference::name).toList());
    assertEquals(2.0, found.get(0).sheet());
    assertEquals("Client!A3", found.get(1).where());
  }
}
