package frillbook.agreement;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What came of comparing workbooks with the engine.
 *
 * @param briefs how many were compared
 * @param cells how many cells were compared
 * @param remainders of these, how many agree only within the rounding of what they are left from
 * @param largest the largest relative difference in the other cells that agree
 */
record Findings(
    int briefs, long cells, long remainders, double largest, List<Difference> differences) {
  static final Findings NONE = new Findings(0, 0, 0, 0, List.of());

  private static final int SHOWN = 25;
  private static final long CELLS_PER_REMAINDER = 100_000;

  /** Cells that show an error, as the workbook tells them. */
  static Findings errors(TrialBrief brief, List<String> errors) {
    return new Findings(
        0, 0, 0, 0, errors.stream().map(error -> Difference.error(brief, error)).toList());
  }

  Findings and(Findings more) {
    return new Findings(
        briefs + more.briefs,
        cells + more.cells,
        remainders + more.remainders,
        Math.max(largest, more.largest),
        Stream.concat(differences.stream(), more.differences.stream()).toList());
  }

  /** Fails where anything differs, and also where there was nothing to compare. */
  void requireAgreement() {
    if (!differences.isEmpty()) {
      throw new AssertionError(
          differences.stream()
              .limit(SHOWN)
              .map(Difference::toString)
              .collect(Collectors.joining("\n", differences.size() + " differences\n", "")));
    }
    if (cells == 0) {
      throw new AssertionError("no cell was compared");
    }
    if (remainders * CELLS_PER_REMAINDER > cells) {
      throw new AssertionError("too many cells agree only within rounding: " + this);
    }
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d briefs, %d cells compared, largest relative difference %.1e"
            + " (%d cells agree within the rounding of a larger number)",
        briefs,
        cells,
        largest,
        remainders);
  }
}
