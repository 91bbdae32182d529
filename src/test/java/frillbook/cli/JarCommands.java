package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;

/**
 * Commands of the jar that is handed out, one after the other in one process: to start one for each
 * takes longer than most of them.
 */
final class JarCommands {
  /** Ends what a command says, before its exit code. */
  private static final String END = "-- exit code ";

  private JarCommands() {}

  /**
   * Runs every line of a file as a command, its words parted by tabs. The program is that of the
   * jar, which stands first among the classes.
   */
  public static void main(String[] args) throws IOException {
    for (String line : Files.readAllLines(Path.of(args[0]))) {
      String[] words = line.split("\t");
      CommandLine command = Frillbook.commandLine(words);
      int exitCode = Frillbook.run(command, words);
      command.getOut().flush();
      command.getErr().flush();
      System.out.println(END + exitCode);
      System.err.println(END + exitCode);
    }
  }

  /**
   * What each of {@code commands} says.
   *
   * @param folder of the process, and where it may leave what it says
   * @param environment beside that of this test
   */
  static List<Ran> run(Path folder, Map<String, String> environment, List<List<String>> commands)
      throws IOException, InterruptedException {
    Path file = folder.resolve("commands.txt");
    Files.write(file, commands.stream().map(words -> String.join("\t", words)).toList());
    String classes =
        JarCommands.class.getProtectionDomain().getCodeSource().getLocation().getPath();
    String path = PackagedJar.FILE + System.getProperty("path.separator") + classes;
    List<String> start = List.of("-cp", path, JarCommands.class.getName());
    Ran all = PackagedJar.run(folder, environment, start, file.toString());
    List<Said> out = said(all.out());
    List<Said> err = said(all.err());
    assertEquals(commands.size(), out.size(), all.err());
    List<Ran> each = new ArrayList<>();
    for (int i = 0; i < commands.size(); i++) {
      each.add(new Ran(out.get(i).exitCode(), out.get(i).text(), err.get(i).text()));
    }
    return each;
  }

  /** What a command said in one place, and how it ended. */
  private record Said(String text, int exitCode) {}

  private static List<Said> said(String printed) {
    List<Said> each = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (String line : printed.lines().toList()) {
      if (line.startsWith(END)) {
        each.add(new Said(text.toString(), Integer.parseInt(line.substring(END.length()))));
        text.setLength(0);
      } else {
        text.append(line).append('\n');
      }
    }
    return each;
  }
}
