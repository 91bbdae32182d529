package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Elsewhere;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** German writes a comma for the decimal point; Turkish has an i of its own among its capitals. */
@Isolated("the language holds for the whole process")
class LocaleTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR"})
  void thePlanReadsTheSame(String locale) {
    String[] plan = {"plan", "--unit=CM", "--input=grain=BIAS", "--diameter=15 3/4 IN"};
    assertSame(locale, () -> Ran.run(plan));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR"})
  void theInputsReadTheSame(String locale) {
    assertSame(locale, () -> Ran.run("inputs"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR"})
  void aRefusalReadsTheSame(String locale) {
    assertSame(locale, () -> Ran.run("plan", "--input=selvage=2.5", "--input=TIDY=1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR"})
  void theWorkbookHasTheSameBytes(String locale) throws IOException {
    Path here = folder.resolve("here.xlsx");
    Path there = folder.resolve("there.xlsx");
    Elsewhere.in("en-GB", () -> Ran.runSmall("make", "-o", here.toString()));
    Elsewhere.in(locale, () -> Ran.runSmall("make", "-o", there.toString()));
    assertArrayEquals(Files.readAllBytes(here), Files.readAllBytes(there));
  }

  private static void assertSame(String locale, Supplier<Ran> run) {
    assertEquals(Elsewhere.in("en-GB", run), Elsewhere.in(locale, run));
  }
}
