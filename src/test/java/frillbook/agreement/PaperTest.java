package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.Sample;
import frillbook.StrippedFile;
import frillbook.materials.Material;
import frillbook.measure.LengthUnit;
import frillbook.plan.GrainsCompared;
import frillbook.plan.Plan;
import frillbook.plan.RowWork;
import frillbook.template.Form;
import frillbook.wording.CodeWord;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is on paper after inputs have been changed in the sheet. A maker makes the workbook once and
 * then changes cells, so the file that is printed is always the one with the presets.
 */
final class PaperTest {
  private static final Pattern FIRST_NUMBER = Pattern.compile("^(\\d+)\\s.*");

  /** Of the sheets a person uses, whatever the plan; the others are not printed. */
  private static final int PAGES = 14;

  /** Title, foot and a heading; less is a page that nobody wants. */
  private static final int FEWEST_LINES = 6;

  @TempDir Path folder;

  @BeforeEach
  void skipWhereAProgramIsAbsent() {
    Office.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
  }

  /** Wide fabrics, and raw edges that lie clear of the next ring: what is changed is tried. */
  private static TrialBrief brief(
      LengthUnit unit, double diameter, double spacing, double quantity) {
    double inch = unit == LengthUnit.INCH ? 1 : 2.54;
    return TrialBrief.preset(Trials.TEMPLATE, unit)
        .with("diameter", Math.round(diameter * inch * 10) / 10.0)
        .with("ring_spacing", spacing * inch)
        .with("stitch_inset", Math.min(.25, spacing / 2) * inch)
        .with("quantity", quantity)
        .with("fabric_width", 72 * inch)
        .with("base_fabric_width", 72 * inch)
        .with("interfaced", "none")
        .titled(diameter + " in, rings " + spacing + " in, " + (int) quantity + " cushions");
  }

  /** Every size with both spacings and both units, every quantity with every one of them. */
  private static List<TrialBrief> briefs() {
    return List.of(
        brief(Trials.INCH, 4, .125, 50),
        brief(Trials.CM, 4, .5, 1),
        brief(Trials.CM, 18, .126, 3),
        brief(Trials.INCH, 18, 5.9, 50),
        brief(Trials.INCH, 30, .125, 1),
        brief(Trials.CM, 30, 5.9, 50),
        brief(Trials.CM, 59, .126, 1).with("grain", "bias"),
        brief(Trials.INCH, 60, 6, 3).with("grain", "bias"),
        brief(Trials.INCH, 30, .75, 3).with("grain", "bias").with("matching_discs", 2.0));
  }

  private static RowWork rows(TrialBrief brief) {
    return brief.plan().rows().orElseThrow();
  }

  private static GrainsCompared cutting(TrialBrief brief) {
    Plan plan = brief.plan();
    return plan.cutting().orElseThrow(() -> new AssertionError("no plan for " + brief));
  }

  /** What is printed of the file with the inputs of {@code made} when others are typed into it. */
  private List<PrintedPages> printed(TrialBrief made, List<TrialBrief> typed) throws Exception {
    Path file = folder.resolve("made.xlsx");
    Files.write(file, StrippedFile.of(PressedFile.of(made)));
    Office office = new Office().open(file);
    List<Path> pages = new ArrayList<>();
    for (TrialBrief brief : typed) {
      pages.add(folder.resolve("typed" + pages.size() + ".pdf"));
      brief.cells().forEach(office::type);
      office.print(pages.get(pages.size() - 1));
    }
    office.close().run();
    List<PrintedPages> printed = new ArrayList<>();
    for (Path pdf : pages) {
      printed.add(PrintedPages.of(pdf, folder));
    }
    return printed;
  }

  /** The numbers that lines of {@code lines} begin with. */
  private static List<Integer> firstNumbers(List<String> lines) {
    List<Integer> numbers = new ArrayList<>();
    for (String line : lines) {
      Matcher number = FIRST_NUMBER.matcher(line);
      if (number.matches()) {
        numbers.add(Integer.valueOf(number.group(1)));
      }
    }
    return numbers;
  }

  @ParameterizedTest
  @EnumSource
  void everyRingJoinPieceAndMaterialIsOnPaperHoweverTheInputsAreChanged(LengthUnit unit)
      throws Exception {
    List<TrialBrief> briefs =
        Sample.of(briefs(), 3).stream().filter(brief -> brief.unit() == unit).toList();
    List<PrintedPages> printed = printed(TrialBrief.preset(Trials.TEMPLATE, unit), briefs);
    for (int i = 0; i < briefs.size(); i++) {
      rings(briefs.get(i), printed.get(i));
      joins(briefs.get(i), printed.get(i));
      pieces(briefs.get(i), printed.get(i));
      materials(briefs.get(i), printed.get(i));
      assertEquals(List.of(), printed.get(i).nearlyEmpty(FEWEST_LINES), briefs.get(i).toString());
      assertEquals(PAGES, printed.get(i).pages().size(), briefs.get(i).toString());
    }
  }

  private static void rings(TrialBrief brief, PrintedPages printed) {
    List<Integer> listed =
        rows(brief).paper().ringsOnPaper().stream().map(ring -> ring.paperRing()).toList();
    List<String> lines = printed.of("Rings");
    List<Integer> found = firstNumbers(lines.subList(0, first(lines, "Rings ")));
    assertTrue(found.size() >= listed.size(), () -> brief + ": found " + found + ", not " + listed);
    assertEquals(
        listed, found.subList(found.size() - listed.size(), found.size()), brief::toString);
    assertEquals(rows(brief).rings().ringCount(), listed.get(listed.size() - 1), brief::toString);
  }

  /** Where the first line stands that begins so; the foot of a page begins with its sheet. */
  private static int first(List<String> lines, String begin) {
    int found =
        lines.indexOf(lines.stream().filter(line -> line.startsWith(begin)).findFirst().orElse(""));
    assertTrue(found >= 0, () -> begin + " in " + lines);
    return found;
  }

  /** The left half of the table; the right half begins within its lines. */
  private static void joins(TrialBrief brief, PrintedPages printed) {
    var joins = cutting(brief).cut().orElseThrow().joins();
    List<String> lines = printed.of("Rings");
    List<Integer> left = firstNumbers(lines.subList(first(lines, "Join "), lines.size()));
    assertEquals(Math.min(30, joins.size()), left.size(), () -> brief + ": " + lines);
    if (joins.size() > 30) {
      String last = lines.get(lines.size() - 2 - (30 - (joins.size() - 30)));
      assertTrue(last.matches(".*\\b" + joins.size() + "\\b.*"), () -> brief + ": " + last);
    }
  }

  private static void pieces(TrialBrief brief, PrintedPages printed) {
    var cut = cutting(brief).cut().orElseThrow();
    List<String> lines = printed.of("Cutting");
    int shorter = cut.total().oddCount();
    int rows = (shorter + 5) / 6;
    List<Integer> found = firstNumbers(lines);
    for (int row = 0; row < rows; row++) {
      assertTrue(found.contains(6 * row + 1), () -> brief + ": " + lines);
    }
    String said = String.join(" ", lines);
    int full = cut.total().fullCount();
    assertTrue(
        full == 0 || said.matches("(?s).*Full strips\\s+" + full + "\\s.*"),
        () -> brief + ": " + said);
  }

  /** What is bought stands line below line; what is not bought is not there. */
  private static void materials(TrialBrief brief, PrintedPages printed) {
    List<String> lines = printed.of("Shopping");
    List<String> bought = new ArrayList<>();
    List<CodeWord> words =
        Form.of(Trials.TEMPLATE).vocabulary().words().byName().get("material_name");
    List<Material> materials =
        cutting(brief).cut().orElseThrow().costing().bill().materials().materials();
    for (int i = 0; i < materials.size(); i++) {
      if (materials.get(i).materialBought() > 0) {
        bought.add(words.get(i).word());
      }
    }
    int first = lines.indexOf(starting(lines, bought.get(0)));
    assertTrue(first >= 0, () -> brief + ": " + bought + " in " + lines);
    for (int i = 0; i < bought.size(); i++) {
      String line = lines.get(first + i);
      assertTrue(line.startsWith(bought.get(i)), () -> brief + ": " + bought + " in " + lines);
    }
    String next = lines.get(first + bought.size());
    assertTrue(next.startsWith("Fabric in "), () -> brief + ": " + next + " after " + bought);
  }

  private static String starting(List<String> lines, String word) {
    return lines.stream().filter(line -> line.startsWith(word)).findFirst().orElse("");
  }

  /** A centre gap as wide as the cushion stops the plan; a narrower one puts it right. */
  @Test
  void aStopThatWasPutRightIsPrintedInFull() throws Exception {
    TrialBrief stopped =
        TrialBrief.preset(Trials.TEMPLATE, Trials.INCH)
            .with("interfaced", "base")
            .with("centre_gap", 9.0);
    assertFalse(stopped.plan().guards().makingOk(), "it stops");
    TrialBrief right = stopped.with("centre_gap", 0.5).titled("put right");
    PrintedPages printed = printed(stopped, List.of(right)).get(0);
    rings(right, printed);
    joins(right, printed);
    pieces(right, printed);
    materials(right, printed);
  }
}
