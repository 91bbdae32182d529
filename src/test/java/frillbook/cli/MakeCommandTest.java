package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MakeCommandTest {
  @TempDir private Path folder;

  @Test
  void theHeadlineTellsWhatTheCushionComesTo() {
    Path file = folder.resolve("small.xlsx");
    String column = " ".repeat(file.toString().length() - "26 1/8".length());
    // Worked out at Ran.SMALL.
    assertEquals(
        new Ran(
            0,
            """
            workbook                %2$s
            All checks              READY
            Frill fabric to buy     %1$s 4 1/2  in     (11.4 cm)
            Strips to cut           %1$s     1  strip
            Cut strips this wide    %1$s 2 1/4  in     (5.7 cm)
            Strip before gathering  %1$s26 1/8  in     (66.4 cm)
            Frill fabric            %1$s   1/8  yd
            Base fabric             %1$s   1/4  yd
            Filling, all cushions   %1$s   0.1  oz     (4 g)
            Finished cushion        %1$s   0.4  oz     (12 g)
            Cost of the order       %1$s 59.48  USD
            Price of one cushion    %1$s 77.50  USD
            Price of the order      %1$s 77.50  USD
            Lowest price of one     %1$s 59.48  USD
            Hours                   %1$s  2.68  h
            """
                .formatted(column, file),
            ""),
        makeSmall(file));
  }

  @Test
  void theWorkbookHoldsTheInputsAndTheirResults() throws IOException {
    Path file = folder.resolve("small.xlsx");
    makeSmall(file);
    try (XSSFWorkbook workbook = open(file)) {
      WorkbookValues values = new WorkbookValues(workbook);
      assertEquals(4.0, values.value("diameter"), values.where("diameter"));
      assertEquals("rings", values.value("row_style"), values.where("row_style"));
      // 2 × 4π + 1, as at Ran.SMALL.
      double flat = (Double) values.value("flat_length");
      assertEquals(8 * Math.PI + 1, flat, 1e-9, values.where("flat_length"));
    }
  }

  @Test
  void nothingButTheWorkbookIsLeftInTheFolder() throws IOException {
    makeSmall(folder.resolve("small.xlsx"));
    assertEquals(List.of("small.xlsx"), files());
  }

  @Test
  void theSameBriefGivesTheSameBytes() throws IOException {
    makeSmall(folder.resolve("one.xlsx"));
    makeSmall(folder.resolve("two.xlsx"));
    assertArrayEquals(read("one.xlsx"), read("two.xlsx"));
  }

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    Path file = Files.writeString(folder.resolve("kept.xlsx"), "kept");
    assertEquals(
        Ran.refusal(
            1, file + " already exists. Name another file with -o, or replace it with --force."),
        makeSmall(file));
    assertEquals("kept", Files.readString(file));
    assertEquals(List.of("kept.xlsx"), files());
  }

  @Test
  void forceReplacesAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("old.xlsx"), "old");
    Ran.runSmall("make", "--force", "-o", file.toString());
    makeSmall(folder.resolve("new.xlsx"));
    assertArrayEquals(read("new.xlsx"), read("old.xlsx"));
  }

  @Test
  void aFolderThatIsNotThereIsNotMade() throws IOException {
    Path file = folder.resolve("no").resolve("small.xlsx");
    assertEquals(
        Ran.refusal(
            1,
            "The folder for "
                + file
                + " was not found. Make the folder first, or name another with -o."),
        makeSmall(file));
    assertEquals(List.of(), files());
  }

  @Test
  void aFolderIsNoPlaceForAWorkbook() throws IOException {
    Path place = Files.createDirectory(folder.resolve("place.xlsx"));
    assertEquals(
        Ran.refusal(1, place + " cannot be written. Name another place with -o."),
        Ran.runSmall("make", "--force", "-o", place.toString()));
    assertEquals(List.of("place.xlsx"), files());
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan.ods", "plan.xls", "plan"})
  void whatIsNotAnXlsxIsNotFilledWithOne(String name) throws IOException {
    Path file = folder.resolve(name);
    assertEquals(
        Ran.refusal(
            2,
            "-o: found \""
                + file
                + "\". A workbook is written as .xlsx, which every spreadsheet program opens. Name it "
                + folder.resolve("plan.xlsx")
                + "."),
        makeSmall(file));
    assertEquals(List.of(), files());
  }

  @Test
  void aNameThatIsTooLongForTheDiskLeavesNothing() throws IOException {
    Path file = folder.resolve("x".repeat(300) + ".xlsx");
    assertEquals(
        Ran.refusal(1, file + " cannot be written. Name another place with -o."), makeSmall(file));
    assertEquals(List.of(), files());
  }

  @Test
  void aBriefWithAMistakeWritesNothing() throws IOException {
    Path file = folder.resolve("small.xlsx");
    Ran ran = Ran.run("make", "-o", file.toString(), "--diameter=3");
    assertEquals(2, ran.exitCode(), ran.err());
    assertEquals(List.of(), files());
  }

  @Test
  void aBriefWhosePartsDoNotFitIsWrittenToBeChanged() {
    Path file = folder.resolve("stop.xlsx");
    Ran ran = Ran.runSmall("make", "-o", file.toString(), "--input=centre_gap=1");
    assertEquals(0, ran.exitCode());
    assertEquals(
        "No ring fits between the centre gap and the edge clearance. Make one of them, or the ring"
            + " spacing, smaller.\n",
        ran.err());
    assertEquals(List.of("All checks              STOP", "Frill fabric to buy     –"), starts(ran));
  }

  @Test
  void inchesArePrintedOnLetterAndCentimetresOnA4() throws IOException {
    makeSmall(folder.resolve("inch.xlsx"));
    Ran.run("make", "--unit=cm", "-o", folder.resolve("cm.xlsx").toString());
    assertEquals(PrintSetup.LETTER_PAPERSIZE, paper("inch.xlsx"));
    assertEquals(PrintSetup.A4_PAPERSIZE, paper("cm.xlsx"));
  }

  @Test
  void anotherPaperMayBeAskedFor() throws IOException {
    Ran.runSmall("make", "--paper=A4", "-o", folder.resolve("inch.xlsx").toString());
    Ran.run("make", "--unit=cm", "--paper=Letter", "-o", folder.resolve("cm.xlsx").toString());
    assertEquals(PrintSetup.A4_PAPERSIZE, paper("inch.xlsx"));
    assertEquals(PrintSetup.LETTER_PAPERSIZE, paper("cm.xlsx"));
  }

  private static Ran makeSmall(Path file) {
    return Ran.runSmall("make", "-o", file.toString());
  }

  /** The second and third line, without unit and what is right of it. */
  private static List<String> starts(Ran ran) {
    return ran.out().lines().skip(1).limit(2).map(line -> line.replaceAll(" +in$", "")).toList();
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private byte[] read(String name) throws IOException {
    return Files.readAllBytes(folder.resolve(name));
  }

  private short paper(String name) throws IOException {
    try (XSSFWorkbook workbook = open(folder.resolve(name))) {
      return workbook.getSheetAt(0).getPrintSetup().getPaperSize();
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return new XSSFWorkbook(stream);
    }
  }
}
