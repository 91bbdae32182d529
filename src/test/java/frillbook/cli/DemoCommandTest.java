package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir private Path folder;

  @Test
  void theDemoTellsWhereItIsAndThatItIsReady() {
    Path file = folder.resolve("demo.xlsx");
    Ran ran = Ran.run("demo", "-o", file.toString());
    assertEquals(new Ran(0, ran.out(), ""), ran);
    assertEquals(
        List.of("workbook                " + file, "All checks              READY"),
        ran.out().lines().limit(2).toList());
  }

  @Test
  void theDemoIsWrittenAgainAtEveryRun() throws IOException {
    Path file = Files.writeString(folder.resolve("demo.xlsx"), "old");
    assertEquals(0, Ran.run("demo", "-o", file.toString()).exitCode());
    try (InputStream stream = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(stream)) {
      WorkbookValues values = new WorkbookValues(workbook);
      assertEquals(3.0, values.value("quantity"), values.where("quantity"));
      assertEquals("bias", values.value("grain"), values.where("grain"));
    }
  }

  @Test
  void theDemoNeedsItsFolder() {
    Path file = folder.resolve("no").resolve("demo.xlsx");
    assertEquals(
        Ran.refusal(
            1,
            "The folder for "
                + file
                + " was not found. Make the folder first, or name another with -o."),
        Ran.run("demo", "-o", file.toString()));
  }
}
