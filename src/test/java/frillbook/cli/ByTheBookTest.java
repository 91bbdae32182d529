package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A line, an input and a column are one entry each, as DEVELOPERS.md says, and nothing else is
 * touched.
 *
 * <p>By hand: the small cushion has two rings. With three beads times the ring's number on each, as
 * asked for, they take 3 and 6, which is 9.
 */
class ByTheBookTest {
  private static final String INPUT =
      """
        - input: bead_count
          label: Beads on the first ring
          part: shape
          kind: count
          unit: beads
          default: 1
          from: 0
          to: 99
          prompt: The second ring has twice as many, the third three times.
      """;

  private static final String LINE =
      """
        - line: bead_total
          label: Beads
          unit: beads
          format: count
          headline: true
          guard: shape_ok
          formula: SUM(ring_beads)
          note: On all rings of one cushion.
      """;

  private static final String COLUMN =
      """
            - column: ring_beads
              label: Beads
              unit: beads
              format: count
              formula: "[ring_no]*bead_count"
              note: On this ring.
      """;

  private static final String ASKED = "--input=bead_count=3";

  @TempDir private Path around;

  private String option;

  @BeforeEach
  void addOneOfEach() throws IOException {
    Path folder = around.resolve("mine");
    assertEquals(0, Ran.run("templates", folder.toString()).exitCode());
    append(folder.resolve("brief.yaml"), INPUT + LINE);
    append(folder.resolve("every-ring.yaml"), COLUMN);
    option = "--templates=" + folder;
  }

  private static void append(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardOpenOption.APPEND);
  }

  @Test
  void theWorkbookHasAllThreeAndTheHeadlineSaysTheLine() throws IOException {
    Path file = around.resolve("beads.xlsx");
    Ran ran = Ran.runSmall("make", option, ASKED, "-o", file.toString());
    assertEquals("", ran.err());
    assertTrue(ran.out().matches("(?s).*\\nBeads +9 +beads\\n.*"), ran.out());
    try (InputStream bytes = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
      WorkbookValues values = new WorkbookValues(workbook);
      assertEquals(3.0, values.value("bead_count"));
      assertEquals(9.0, values.value("bead_total"));
      assertEquals(List.of(3.0, 6.0, ""), values.column("ring_beads").subList(0, 3));
    }
  }

  @Test
  void thePlanSaysLineAndColumn() {
    Ran ran = Ran.runSmall("plan", option, ASKED);
    assertTrue(ran.out().matches("(?s).*\\nBeads +9 +beads\\n.*"), ran.out());
    assertTrue(
        ran.out().matches("(?s).*\\nRing .* Beads\\n +1 .* 3\\n +2 .* 6\\n\\n.*"), ran.out());
  }

  @Test
  void theInputIsListedAndItsRangeKept() {
    assertTrue(
        Ran.run("inputs", option).out().matches("(?s).*\\nbead_count +beads +1 +0 to 99 .*"));
    assertEquals(
        Ran.refusal(
            2,
            "bead_count: found \"100\"."
                + " “Beads on the first ring” must be a whole number from 0 to 99."),
        Ran.runSmall("plan", option, "--input=bead_count=100"));
  }
}
