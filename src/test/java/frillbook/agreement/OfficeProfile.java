package frillbook.agreement;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The settings of LibreOffice for the tests of one process, with the macro that types and
 * calculates. To make them takes longer than to calculate a workbook.
 */
final class OfficeProfile {
  private static final String MACRO = "macro:///Standard.Module1.Calculate(\"%s\")";

  private static OfficeProfile known;

  private final Path folder;

  private OfficeProfile(Path folder) {
    this.folder = folder;
  }

  /** Made once; deleted when the process ends. */
  static synchronized OfficeProfile get() throws IOException, InterruptedException {
    if (known == null) {
      Path folder = Files.createTempDirectory("office-profile");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      OfficeProfile made = new OfficeProfile(folder);
      // The first start makes the settings, an empty macro among them.
      made.run("--terminate_after_init");
      made.writeMacro();
      known = made;
    }
    return known;
  }

  /** Does what the lines of {@code job} say. */
  void calculate(Path job) throws IOException, InterruptedException {
    run(MACRO.formatted(job.toUri()));
  }

  private void run(String argument) throws IOException, InterruptedException {
    Path printed = folder.resolve("printed.txt");
    List<String> arguments =
        List.of(
            "--headless",
            "--norestore",
            "-env:UserInstallation=" + folder.resolve("settings").toUri(),
            argument);
    LibreOffice.PROGRAM.await(List.of(LibreOffice.PROGRAM.start(arguments, printed)), printed);
  }

  private void writeMacro() throws IOException {
    Path module = folder.resolve("settings/user/basic/Standard/Module1.xba");
    String empty = Files.readString(module);
    int end = empty.indexOf('>', empty.indexOf("<script:module")) + 1;
    String basic = source().replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    Files.writeString(module, empty.substring(0, end) + basic + "</script:module>\n");
  }

  private static String source() throws IOException {
    try (InputStream in = OfficeProfile.class.getResourceAsStream("trials.bas")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
    } catch (IOException e) {
      System.err.println(folder + " is left behind: " + e.getMessage());
    }
  }
}
