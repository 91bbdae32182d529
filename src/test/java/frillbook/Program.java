package frillbook;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A program beside Java that a check needs.
 *
 * @param command by which it is called
 * @param demandedBy the environment variable, or property of the test run, that makes its absence a
 *     failure and no reason to skip
 */
public record Program(String command, String demandedBy) {
  private static final int MOST_MINUTES = 10;

  public boolean isPresent() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
  }

  private boolean isDemanded() {
    return Boolean.parseBoolean(System.getenv(demandedBy)) || Boolean.getBoolean(demandedBy);
  }

  /** Starts it; what it prints is added to {@code printed}. */
  public Process start(List<String> arguments, Path printed) throws IOException {
    List<String> words = new ArrayList<>(List.of(command));
    words.addAll(arguments);
    return new ProcessBuilder(words)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(printed.toFile()))
        .start();
  }

  /** Waits until all have done their work. */
  public void await(List<Process> running, Path printed) throws IOException, InterruptedException {
    for (Process process : running) {
      if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
        running.forEach(Process::destroyForcibly);
        throw new IOException(command + " failed: " + Files.readString(printed));
      }
    }
  }

  /** Skips a test with a word where the program is absent, and fails it where it is demanded. */
  public void requireOrSkip() {
    if (!isPresent() && !isDemanded()) {
      System.out.println("SKIPPED: " + command + " is not installed and has checked nothing");
      assumeTrue(false, command + " is not installed");
    }
    assertTrue(isPresent(), command + " is demanded by " + demandedBy + " and not installed");
  }
}
