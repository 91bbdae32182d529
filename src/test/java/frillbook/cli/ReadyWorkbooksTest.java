package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The workbooks for those who have no Java are those that this version makes. */
final class ReadyWorkbooksTest {
  private static final Path FOLDER = Path.of("src/workbooks");

  @TempDir private Path folder;

  private Map<String, String> made(LengthUnit unit) throws IOException {
    return PackageText.parts(Files.write(folder.resolve("made.xlsx"), ReadyWorkbooks.made(unit)));
  }

  /** Part for part: the bytes of the file hang on the machine's own deflating, too. */
  @ParameterizedTest
  @EnumSource
  void everyPartIsWhatThisVersionMakes(LengthUnit unit) throws IOException {
    Map<String, String> made = made(unit);
    Map<String, String> ready = PackageText.parts(FOLDER.resolve(ReadyWorkbooks.name(unit)));
    Set<String> other = new TreeSet<>(made.keySet());
    other.addAll(ready.keySet());
    other.removeIf(part -> Objects.equals(made.get(part), ready.get(part)));
    assertEquals(
        Set.of(),
        other,
        "parts of "
            + ReadyWorkbooks.name(unit)
            + " that are out of date; make both anew: mvn -q compile exec:java@ready-workbooks");
  }

  @ParameterizedTest
  @EnumSource
  void theReadmeLeadsToIt(LengthUnit unit) throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    assertTrue(readme.contains("(" + FOLDER + "/" + ReadyWorkbooks.name(unit) + ")"), readme);
  }
}
