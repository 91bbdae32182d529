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
   * 5 1/4; the back of 5 lies beside it, so two buy steps of the other fabric are enough.
   *
   * <p>Two discs of 10.16 cm filled to the limit hold 2/3·π·5.08·3.875² cm³ = 0.16 L (Mylar
   * balloon); at 25 g/L that is 4.0 g. The finished cushion: frill 0.0379 m² × 80, base and back
   * 0.0266 m² × 150, interfacing 0.0140 m² × 60 and the filling, 11.9 g.
   *
   * <p>Bought: 1/8 yd at 12, 1/4 yd at 6, 1/4 yd of interfacing at 4, a bag at 5, a reel at 2.50:
   * 11.50. Minutes: talk 20, sample 20, strip 11.5, three discs 14, fuse 3, press 0.664 m 0.20, two
   * gathering rows of that 10.66, pull it up 1.00, mark 6, tack 0.319 m 0.96, sew it 11.28, four
   * ends 8, back 10, edge 0.319 m 6.28, fill 20, finish 10, pack 8: 160.88, or 2.68 h, at 15 an
   * hour 40.22. 15 % on the 51.72 is 7.76, so the cost is 59.48; with 30 % on it 77.32, tidied to
   * 77.50.
   */
  static final String[] SMALL = {
    "--diameter=4",
    "--ring-spacing=1",
    "--fullness=2",
    "--input=row_style=rings",
    "--input=ring_lap=0",
    "--input=spare_strips=0",
    "--input=matching_discs=0"
  };

  static Ran run(String... args) {
    return run(Frillbook.commandLine(args), args);
  }

  static Ran run(CommandLine line, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    line.setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    int exitCode = Frillbook.run(line, args);
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
