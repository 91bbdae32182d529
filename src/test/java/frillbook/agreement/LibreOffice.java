package frillbook.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** LibreOffice Calc, run without a window to calculate files and write them again. */
final class LibreOffice implements Calculator {
  static final Program PROGRAM = new Program("soffice", "FRILLBOOK_REQUIRE_SOFFICE");

  private static final int AT_ONCE = 2;

  private final Path folder;

  /**
   * @param folder for its settings and what it prints
   */
  LibreOffice(Path folder) {
    this.folder = folder;
  }

  @Override
  public Program program() {
    return PROGRAM;
  }

  @Override
  public void calculate(List<Path> files, Path out) throws IOException, InterruptedException {
    int share = (files.size() + AT_ONCE - 1) / AT_ONCE;
    List<Process> running = new ArrayList<>();
    for (int from = 0; from < files.size(); from += share) {
      List<Path> part = files.subList(from, Math.min(files.size(), from + share));
      running.add(start(part, out, folder.resolve("profile" + running.size())));
    }
    PROGRAM.await(running, printed());
  }

  /** Programs at work at the same time need a profile each. */
  private Process start(List<Path> files, Path out, Path profile) throws IOException {
    List<String> arguments = new ArrayList<>(List.of("--headless", "--norestore"));
    arguments.add("-env:UserInstallation=" + profile.toUri());
    arguments.addAll(List.of("--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir"));
    arguments.add(out.toString());
    files.forEach(file -> arguments.add(file.toString()));
    return PROGRAM.start(arguments, printed());
  }

  private Path printed() {
    return folder.resolve("soffice.txt");
  }
}
