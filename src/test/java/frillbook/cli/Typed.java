package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.StrippedFile;
import frillbook.TypedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A plan on disk and what a person does to it before it is read again. */
record Typed(Path plan) {
  /** A plan made with {@code args}, which may not be refused. */
  static Typed made(Path folder, String... args) {
    Path plan = folder.resolve("plan.xlsx");
    String[] start = {"make", "--force", "-o", plan.toString()};
    Ran ran = Ran.run(Stream.of(start, args).flatMap(Stream::of).toArray(String[]::new));
    assertEquals(0, ran.exitCode(), ran.err());
    return new Typed(plan);
  }

  /** Puts values into inputs and saves; no formula is calculated. */
  Typed with(Map<String, Object> inputs) throws IOException {
    return written(file().with(inputs));
  }

  private TypedFile file() throws IOException {
    return new TypedFile(Files.readAllBytes(plan));
  }

  private Typed written(byte[] file) throws IOException {
    Files.write(plan, file);
    return this;
  }

  /** Puts a formula into an input and saves it without a value. */
  Typed withFormula(String input, String formula) throws IOException {
    return written(file().withFormula(input, formula));
  }

  /** Puts a formula into an input and saves {@code value} as what it came to. */
  Typed withFormula(String input, String formula, Consumer<XSSFCell> value) throws IOException {
    return withFormula(input, formula).withSavedValue(input, value);
  }

  /** Saves {@code value} as what the formula in an input came to. */
  Typed withSavedValue(String input, Consumer<XSSFCell> value) throws IOException {
    return changed(workbook -> value.accept(input(workbook, input)));
  }

  private static XSSFCell input(XSSFWorkbook workbook, String name) {
    String place = workbook.getName(name).getRefersToFormula();
    CellReference at = new CellReference(place);
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  /** Saves with an input emptied. */
  Typed without(String input) throws IOException {
    return with(Collections.singletonMap(input, null));
  }

  /** Saves formulas without the values they had, as some programs do. */
  Typed withoutStoredValues() throws IOException {
    return written(StrippedFile.of(Files.readAllBytes(plan)));
  }

  Typed changed(Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook workbook = open(plan)) {
      change.accept(workbook);
      try (OutputStream out = Files.newOutputStream(plan)) {
        workbook.write(out);
      }
    }
    return this;
  }

  /** The page written for the client, beside the plan. */
  Path page() {
    return plan.resolveSibling("page.xlsx");
  }

  Ran client(String... args) {
    String[] start = {"client", plan.toString(), "-o", page().toString()};
    return Ran.run(Stream.of(start, args).flatMap(Stream::of).toArray(String[]::new));
  }

  /** The page, which must be written without a word. */
  XSSFWorkbook pageWritten(String... args) throws IOException {
    assertEquals(new Ran(0, "page for the client  " + page() + "\n", ""), client(args));
    return open(page());
  }

  static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      return new XSSFWorkbook(stream);
    }
  }
}
