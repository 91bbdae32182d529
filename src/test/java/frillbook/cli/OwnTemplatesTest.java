package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnTemplatesTest {
  private static final Path BUILT_IN = Path.of("workbook-templates");

  @TempDir private Path folder;

  private String option;

  @BeforeEach
  void nameTheFolder() {
    option = "--templates=" + folder;
  }

  @Test
  void aCopyOfTheTemplatesGivesTheSamePlan() throws IOException {
    copyBuiltIn();
    assertEquals(Ran.runSmall("plan"), Ran.runSmall("plan", option));
  }

  @Test
  void everyMistakeIsToldWithItsPlaceAndNothingIsWritten() throws IOException {
    write("workbook.yaml", "title: Small", "sheets: [one.yaml]");
    write(
        "one.yaml",
        "sheet: One",
        "title: One",
        "widths: [20, 10, 10, 10, 30]",
        "rows:",
        "  - line: total",
        "    label: Total",
        "    format: number",
        "    formula: total_of*TODAY()",
        "    guard: none",
        "    note: Everything.");
    Path file = folder.resolve("own.xlsx");
    assertEquals(
        Ran.refusal(
            1,
            "one.yaml:5:5: line total without unit; expected the key unit; add unit: …",
            "one.yaml:8:14: the unknown name total_of; expected the name of an input, line, check,"
                + " column or block; correct it or add what it names",
            "one.yaml:8:23: the function TODAY; expected a function of the portable list, in"
                + " capital letters; use one that every spreadsheet has"),
        Ran.run("make", option, "-o", file.toString()));
    assertFalse(Files.exists(file));
  }

  @Test
  void aFolderWithoutTemplatesIsRefused() {
    assertEquals(
        Ran.refusal(
            1,
            "workbook.yaml:1:1: the file workbook.yaml, which was not found; expected a file of that name among the"
                + " templates; add the file or correct the name"),
        Ran.run("plan", option));
  }

  @Test
  void aFolderThatIsNotThereIsRefused() {
    Path none = folder.resolve("none");
    assertEquals(
        Ran.refusal(
            1, "--templates: " + none + " is not a folder. Name the folder of your templates."),
        Ran.run("inputs", "--templates", none.toString()));
  }

  @Test
  void aFileThatIsNoTextIsRefused() throws IOException {
    Files.write(folder.resolve("workbook.yaml"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertEquals(
        Ran.refusal(
            1,
            "workbook.yaml:1:1: the file workbook.yaml, which is not UTF-8 text;"
                + " expected text in UTF-8; save it as UTF-8 in a text editor"),
        Ran.run("plan", option));
  }

  /** By hand: two buy steps of 4 1/2 in are enough for base and back, and three times 9 is 27. */
  @Test
  void aLineOfOnesOwnIsPrinted() throws IOException {
    copyBuiltIn();
    append(
        "shopping.yaml",
        "  - line: my_price",
        "    label: My price",
        "    unit: EUR",
        "    format: number",
        "    formula: base_buy_length*3",
        "    note: By the length.");
    Ran ran = Ran.runSmall("plan", option);
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(ran.out().matches("(?s).*\nMy price +27 +EUR\n.*"), ran.out());
    assertEquals(
        27, Ran.runSmall("plan", "--json", option).json().at("/lines/my_price").asDouble());
  }

  /**
   * Without other choices, which a plan of twice the strip would contradict. 1509.81 and 755.40 to
   * the eighth. In reading order: the fabric of the first grain stands before all else it changes.
   */
  @Test
  void aFormulaThatSaysSomethingElseIsToldAndTheHeadlineIsTheFiles() throws IOException {
    copyBuiltIn();
    replace("brief.yaml", "stitched_length*fullness+end", "2*stitched_length*fullness+end");
    Path file = folder.resolve("own.xlsx");
    Ran ran =
        Ran.run(
            "make",
            option,
            "--input=cheaper_share=100%",
            "--input=choice_two_more=",
            "--input=choice_three_more=",
            "-o",
            file.toString());
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(ran.err().startsWith("price_each: yours "), ran.err());
    String told = "flat_length: yours 1509 3/4, frillbook's 755 3/8";
    assertTrue(ran.err().lines().anyMatch(told::equals), ran.err());
    assertTrue(ran.out().matches("(?s).*\nStrip before gathering +1509 3/4  in .*"), ran.out());
    assertTrue(Files.exists(file));
  }

  @Test
  void builtInTemplatesDisagreeInNothing() throws IOException {
    copyBuiltIn();
    Path file = folder.resolve("own.xlsx");
    assertEquals("", Ran.run("make", option, "-o", file.toString()).err());
  }

  @Test
  void aFormulaThatGivesAnErrorIsRefusedWithItsPlaceAndNothingIsWritten() throws IOException {
    copyBuiltIn();
    replace("workings.yaml", "diameter/2-edge_clearance", "diameter/(2-2)");
    Path file = folder.resolve("own.xlsx");
    Ran ran = Ran.run("make", option, "-o", file.toString());
    assertEquals(1, ran.exitCode(), ran.err());
    String first = ran.err().lines().findFirst().orElseThrow();
    assertEquals(
        "workings.yaml:"
            + lineOf("workings.yaml", "  - line: outer_radius")
            + ":5: outer_radius gives #DIV/0! at "
            + cellOf("outer_radius")
            + ". Correct the formula.",
        first);
    assertTrue(ran.err().endsWith(" cells hold an error.\n"), ran.err());
    assertFalse(Files.exists(file));
  }

  @Test
  void aWordThePlanDoesNotKnowIsRefused() throws IOException {
    copyBuiltIn();
    replace("brief.yaml", "      one_disc: {", "      lined: lined\n      one_disc: {");
    assertEquals(
        Ran.refusal(
            1,
            "These templates give no plan: the input back_style has no usable value: lined."
                + " Restore it."),
        Ran.runSmall("plan", option, "--input=back_style=lined"));
  }

  /** As a text editor counts. */
  private int lineOf(String file, String text) throws IOException {
    return Files.readAllLines(folder.resolve(file)).indexOf(text) + 1;
  }

  /** Where a workbook of the built-in templates has it. */
  private String cellOf(String name) throws IOException {
    Path file = folder.resolve("built-in.xlsx");
    Ran.run("make", "-o", file.toString());
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      return workbook.getName(name).getRefersToFormula().replace("$", "");
    }
  }

  private void copyBuiltIn() throws IOException {
    try (Stream<Path> files = Files.list(BUILT_IN)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  private void write(String name, String... lines) throws IOException {
    Files.write(folder.resolve(name), List.of(lines));
  }

  private void append(String name, String... lines) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, Files.readString(file) + String.join("\n", lines) + "\n");
  }

  private void replace(String name, String found, String put) throws IOException {
    Path file = folder.resolve(name);
    String text = Files.readString(file);
    assertTrue(text.contains(found), found);
    Files.writeString(file, text.replace(found, put));
  }
}
