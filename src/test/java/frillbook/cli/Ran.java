package frillbook.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;
import picocli.CommandLine;

/** One run of the program: what it said, and where it said it. Lines end in {@code \n}. */
record Ran(int exitCode, String out, String err) {
  /**
   * Inputs of a cushion small enough to plan by hand, in inches.
   *
   * <p>Separate rings of radius 1/2 and 1 1/2 (4/2 − 1/2 edge clearance) are 2π·(1/2 + 3/2) = 4π
   * long; twice that and 1 for the ends is 26.13. One strip of the 53 usable inches is enough, and
   * 2 + 1/4 wide it takes one buy step of 4 1/2. The base is (4 + 2·1/2) ÷ 0.96 = 5.208, marked as
   * 5 1/4; the back of 5 lies beside it, so two buy steps of the other cloth are enough.
   */
  static final String[] SMALL = {
    "--diameter=4",
    "--ring-spacing=1",
    "--fullness=2",
    "--set=row_style=rings",
    "--set=ring_lap=0",
    "--set=spare_strips=0",
    "--set=base_overlays=0"
  };

  static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        Frillbook.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    int exitCode = line.execute(args);
    return new Ran(exitCode, lines(out), lines(err));
  }

  /** {@link #SMALL} with more arguments before it. */
  static Ran runSmall(String... args) {
    return run(Stream.of(args, SMALL).flatMap(Stream::of).toArray(String[]::new));
  }

  /** A run that must refuse: its exit code and sentences. */
  static Ran refusal(int exitCode, String... sentences) {
    return new Ran(exitCode, "", String.join("\n", sentences) + "\n");
  }

  JsonNode json() {
    try {
      return new JsonMapper().readTree(out);
    } catch (JsonProcessingException e) {
      throw new AssertionError("no JSON: " + out + err, e);
    }
  }

  private static String lines(StringWriter written) {
    return written.toString().replace("\r\n", "\n");
  }
}
