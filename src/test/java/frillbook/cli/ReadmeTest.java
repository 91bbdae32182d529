package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The examples of the README, run one after the other in a folder of their own.
 *
 * <p>An example is indented by four and begins with {@code $}. Where a line ends in {@code …}, it
 * goes on; where the last line is {@code …}, more lines follow.
 */
final class ReadmeTest {
  private static final String INDENT = "    ";
  private static final String PROMPT = INDENT + "$ frillbook ";
  private static final String MORE = "…";

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** A command and the lines that the README shows under it. */
  private record Example(String command, List<String> shown) {
    List<String> words() {
      Matcher word = WORD.matcher(command);
      return word.results()
          .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
          .toList();
    }

    boolean goesOn() {
      return !shown.isEmpty() && shown.get(shown.size() - 1).equals(MORE);
    }

    /** The same lines of what was printed, each as far as it is shown. */
    List<String> asShown(List<String> printed) {
      List<String> lines = goesOn() ? shown.subList(0, shown.size() - 1) : shown;
      List<String> cut = new ArrayList<>();
      for (int i = 0; i < printed.size() && (i < lines.size() || !goesOn()); i++) {
        String line = i < lines.size() ? lines.get(i) : "";
        int length = line.length() - 1;
        boolean isCut = line.endsWith(MORE) && printed.get(i).length() > length;
        cut.add(isCut ? printed.get(i).substring(0, length) + MORE : printed.get(i));
      }
      if (goesOn()) {
        cut.add(MORE);
      }
      return cut;
    }
  }

  @TempDir private static Path folder;

  private static List<Example> examples;

  @BeforeAll
  static void read() throws IOException {
    List<Example> found = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("README.md"))) {
      if (line.startsWith(PROMPT)) {
        shown = new ArrayList<>();
        found.add(new Example(line.substring(PROMPT.length()), shown));
      } else if (line.startsWith(INDENT)) {
        shown.add(line.substring(INDENT.length()));
      } else {
        shown = new ArrayList<>();
      }
    }
    examples = found;
  }

  /** What the program prints when it is run in that folder. */
  private static List<String> run(List<String> words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(PackagedJar.SHORT);
    command.add("-Dstdout.encoding=UTF-8");
    command.add("-Dstderr.encoding=UTF-8");
    command.add("-Dfile.encoding=UTF-8");
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(Frillbook.class.getName());
    command.addAll(words);
    Path printed = Files.createTempFile("printed", ".txt");
    new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(printed.toFile())
        .start()
        .waitFor();
    List<String> lines = Files.readAllLines(printed);
    Files.delete(printed);
    return lines;
  }

  @Test
  void everyExamplePrintsWhatTheReadmeShows() throws IOException, InterruptedException {
    assertTrue(examples.size() >= 6, examples.size() + " examples");
    for (Example example : examples) {
      assertTrue(!example.shown().isEmpty(), example.command() + " shows nothing");
      assertEquals(
          lines(example.shown()), lines(example.asShown(run(example.words()))), example.command());
    }
  }

  /** The first thing a reader runs prints the demo. */
  @Test
  void theDemoPrintsWhatTheReadmeShows() throws IOException, InterruptedException {
    List<String> shown =
        Files.readAllLines(Path.of("README.md")).stream()
            .dropWhile(line -> !line.startsWith(INDENT + "workbook "))
            .takeWhile(line -> line.startsWith(INDENT))
            .map(line -> line.substring(INDENT.length()))
            .toList();
    Files.createDirectories(folder.resolve("target"));
    assertEquals(lines(shown), lines(run(List.of("demo"))));
  }

  private static String lines(List<String> lines) {
    return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
  }
}
