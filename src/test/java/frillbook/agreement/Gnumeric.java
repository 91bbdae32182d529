package frillbook.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Gnumeric's converter, which takes one file at a time. */
final class Gnumeric implements Calculator {
  static final Program PROGRAM = new Program("ssconvert", "FRILLBOOK_REQUIRE_SSCONVERT");

  private static final int AT_ONCE = 2;

  private final Path printed;

  /**
   * @param folder for what it prints
   */
  Gnumeric(Path folder) {
    this.printed = folder.resolve("ssconvert.txt");
  }

  @Override
  public Program program() {
    return PROGRAM;
  }

  @Override
  public void calculate(List<Path> files, Path out) throws IOException, InterruptedException {
    for (int from = 0; from < files.size(); from += AT_ONCE) {
      List<Process> running = new ArrayList<>();
      for (Path file : files.subList(from, Math.min(files.size(), from + AT_ONCE))) {
        running.add(start(file, out.resolve(file.getFileName())));
      }
      PROGRAM.await(running, printed);
    }
  }

  private Process start(Path file, Path calculated) throws IOException {
    List<String> arguments =
        List.of(
            "--recalc",
            "--export-type=Gnumeric_Excel:xlsx",
            file.toString(),
            calculated.toString());
    return PROGRAM.start(arguments, printed);
  }
}
