package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The jar that is handed out, run as a program of its own. */
final class PackagedJar {
  static final Path FILE =
      Path.of(System.getProperty("packaged.jar", "target/frillbook.jar")).toAbsolutePath();

  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  /** For a machine that ends before its second compiler and its second collector are of use. */
  private static final List<String> SHORT =
      List.of("-Dfile.encoding=UTF-8", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  private PackagedJar() {}

  static Ran run(Path folder, String... args) throws IOException, InterruptedException {
    return run(folder, Map.of(), List.of("-jar", FILE.toString()), args);
  }

  /**
   * @param folder of the process, and where it may leave what it says
   * @param environment beside that of this test
   * @param start what to run
   */
  static Ran run(Path folder, Map<String, String> environment, List<String> start, String... args)
      throws IOException, InterruptedException {
    Path out = folder.resolve("stdout.txt");
    Path err = folder.resolve("stderr.txt");
    ProcessBuilder program =
        new ProcessBuilder(
            Stream.of(List.of(JAVA.toString()), SHORT, start, List.of(args))
                .flatMap(List::stream)
                .toList());
    program.environment().putAll(environment);
    program.directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    Process process = program.start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), "it does not end");
    return new Ran(process.exitValue(), text(out), text(err));
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n");
  }
}
