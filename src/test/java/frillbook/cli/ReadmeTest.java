package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

  /** What each of them printed, and the demo after them. */
  private static List<List<String>> printed;

  @BeforeAll
  static void run() throws IOException, InterruptedException {
    examples = read();
    List<List<String>> commands = new ArrayList<>();
    examples.forEach(example -> commands.add(example.words()));
    commands.add(List.of("demo"));
    Files.createDirectories(folder.resolve("target"));
    printed =
        JarCommands.run(folder, Map.of(), commands).stream()
            .map(ran -> (ran.err() + ran.out()).lines().toList())
            .toList();
  }

  private static List<Example> read() throws IOException {
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
    return found;
  }

  @Test
  void everyExamplePrintsWhatTheReadmeShows() {
    assertTrue(examples.size() >= 6, examples.size() + " examples");
    for (int i = 0; i < examples.size(); i++) {
      Example example = examples.get(i);
      assertTrue(!example.shown().isEmpty(), example.command() + " shows nothing");
      assertEquals(
          lines(example.shown()), lines(example.asShown(printed.get(i))), example.command());
    }
    assertEquals(examples.size() + 1, printed.size());
  }

  /** The first thing a reader runs prints the demo. */
  @Test
  void theDemoPrintsWhatTheReadmeShows() throws IOException {
    List<String> shown =
        Files.readAllLines(Path.of("README.md")).stream()
            .dropWhile(line -> !line.startsWith(INDENT + "workbook "))
            .takeWhile(line -> line.startsWith(INDENT))
            .map(line -> line.substring(INDENT.length()))
            .toList();
    assertEquals(lines(shown), lines(printed.get(examples.size())));
  }

  private static String lines(List<String> lines) {
    return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
  }
}
