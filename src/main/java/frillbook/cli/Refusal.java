package frillbook.cli;

import java.util.List;

/** A command that cannot go on, with one sentence for each reason. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What was asked for is wrong. */
  static final int USAGE = 2;

  /** What was asked for is right but cannot be done. */
  static final int CANNOT = 1;

  /** An error within the program; EX_SOFTWARE of sysexits.h. */
  static final int FAULT = 70;

  private final int exitCode;

  Refusal(int exitCode, List<String> sentences) {
    super(String.join(System.lineSeparator(), sentences));
    this.exitCode = exitCode;
  }

  Refusal(int exitCode, String sentence) {
    this(exitCode, List.of(sentence));
  }

  int exitCode() {
    return exitCode;
  }
}
