package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesCommandTest {
  @TempDir private Path around;

  private static Map<String, String> texts(Path folder) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }

  private Map<String, Boolean> left() throws IOException {
    Map<String, Boolean> left = new TreeMap<>();
    try (Stream<Path> files = Files.list(around)) {
      files.forEach(file -> left.put(file.getFileName().toString(), Files.isDirectory(file)));
    }
    return left;
  }

  @Test
  void theBuiltInTemplatesAreWrittenAsTheyAre() throws IOException {
    Path folder = around.resolve("mine");
    assertEquals(
        new Ran(0, "templates  " + folder + "\n", ""), Ran.run("templates", folder.toString()));
    assertEquals(texts(Path.of("workbook-templates")), texts(folder));
    assertEquals(Map.of("mine", true), left());
  }

  @Test
  void anEmptyFolderIsFilled() throws IOException {
    Path folder = Files.createDirectory(around.resolve("mine"));
    assertEquals(
        new Ran(0, "templates  " + folder + "\n", ""), Ran.run("templates", folder.toString()));
    assertEquals(texts(Path.of("workbook-templates")), texts(folder));
    assertEquals(Map.of("mine", true), left());
  }

  @Test
  void aFolderThatHoldsAnythingIsLeftAsItIs() throws IOException {
    Path folder = Files.createDirectory(around.resolve("mine"));
    Files.writeString(folder.resolve("brief.yaml"), "mine");
    assertEquals(
        Ran.refusal(1, folder + " already exists and is not an empty folder. Name another folder."),
        Ran.run("templates", folder.toString()));
    assertEquals(Map.of("brief.yaml", "mine"), texts(folder));
  }

  @Test
  void aFileOfThatNameIsLeftAsItIs() throws IOException {
    Path file = Files.writeString(around.resolve("mine"), "words");
    assertEquals(
        Ran.refusal(1, file + " already exists and is not an empty folder. Name another folder."),
        Ran.run("templates", file.toString()));
    assertEquals("words", Files.readString(file));
  }

  @Test
  void aFolderInOneThatIsNotThereIsRefused() {
    Path folder = around.resolve("none").resolve("mine");
    assertEquals(
        Ran.refusal(1, "The folder for " + folder + " was not found. Make it first."),
        Ran.run("templates", folder.toString()));
    assertFalse(Files.exists(folder.getParent()));
  }

  /** A folder lies where the files would be written beside it, and holds what is not ours. */
  @Test
  void whatCannotBeWrittenLeavesNothingBehind() throws IOException {
    Files.writeString(around.resolve(".mine.part"), "in the way");
    Path folder = around.resolve("mine");
    assertEquals(
        Ran.refusal(1, folder + " cannot be written. Name another folder."),
        Ran.run("templates", folder.toString()));
    assertEquals(Map.of(".mine.part", false), left());
  }

  @Test
  void aFolderMustBeNamed() {
    assertEquals(
        Ran.refusal(
            2,
            "DIR is missing: The folder to write. It must not exist yet, or be empty.",
            "'frillbook templates --help' lists what can be given."),
        Ran.run("templates"));
  }
}
