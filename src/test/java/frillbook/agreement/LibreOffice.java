package frillbook.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice Calc, run without a window to calculate files and write them again. */
final class LibreOffice {
  private static final String PROGRAM = "soffice";
  private static final int AT_ONCE = 2;
  private static final int MOST_MINUTES = 10;

  private final Path folder;

  /**
   * @param folder for its settings and what it prints
   */
  LibreOffice(Path folder) {
    this.folder = folder;
  }

  static boolean isPresent() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, PROGRAM)));
  }

  /** Whether its absence is a failure and no reason to skip. */
  static boolean isRequired() {
    return Boolean.parseBoolean(System.getenv("FRILLBOOK_REQUIRE_SOFFICE"))
        || Boolean.getBoolean("FRILLBOOK_REQUIRE_SOFFICE");
  }

  /** Opens every file, calculates it and writes it under the same name into {@code out}. */
  void calculate(List<Path> files, Path out) throws IOException, InterruptedException {
    int share = (files.size() + AT_ONCE - 1) / AT_ONCE;
    List<Process> running = new ArrayList<>();
    for (int from = 0; from < files.size(); from += share) {
      List<Path> part = files.subList(from, Math.min(files.size(), from + share));
      running.add(start(part, out, folder.resolve("profile" + running.size())));
    }
    for (Process process : running) {
      if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
        running.forEach(Process::destroyForcibly);
        throw new IOException(PROGRAM + " failed: " + Files.readString(printed()));
      }
    }
  }

  /** Programs at work at the same time need a profile each. */
  private Process start(List<Path> files, Path out, Path profile) throws IOException {
    List<String> command = new ArrayList<>(List.of(PROGRAM, "--headless", "--norestore"));
    command.add("-env:UserInstallation=" + profile.toUri());
    command.addAll(List.of("--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir"));
    command.add(out.toString());
    files.forEach(file -> command.add(file.toString()));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(printed().toFile()))
        .start();
  }

  private Path printed() {
    return folder.resolve("soffice.txt");
  }
}
