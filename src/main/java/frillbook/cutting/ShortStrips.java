package frillbook.cutting;

import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A row of the printed table of the shorter strips: six cut lengths side by side, the longest
 * first, row by row.
 *
 * @param shortNo number of the row's first strip, from 1
 */
public record ShortStrips(
    int shortNo,
    @Prefixed("one") Optional<Strip> one,
    @Prefixed("two") Optional<Strip> two,
    @Prefixed("three") Optional<Strip> three,
    @Prefixed("four") Optional<Strip> four,
    @Prefixed("five") Optional<Strip> five,
    @Prefixed("six") Optional<Strip> six) {
  private static final int IN_A_ROW = 6;

  /** Rows for the most shorter strips a plan can have. */
  public static final int ROWS = Rounding.up((double) OddPiece.MOST / IN_A_ROW);

  /**
   * One of them.
   *
   * @param shortStrip its cut length
   */
  public record Strip(double shortStrip) {}

  /**
   * @param lengths of the strips that are cut, the longest first
   */
  public static List<ShortStrips> all(List<Double> lengths) {
    int rows = Rounding.up((double) lengths.size() / IN_A_ROW);
    return IntStream.range(0, rows).mapToObj(row -> row(lengths, row * IN_A_ROW)).toList();
  }

  private static ShortStrips row(List<Double> lengths, int first) {
    return new ShortStrips(
        first + 1,
        strip(lengths, first),
        strip(lengths, first + 1),
        strip(lengths, first + 2),
        strip(lengths, first + 3),
        strip(lengths, first + 4),
        strip(lengths, first + 5));
  }

  private static Optional<Strip> strip(List<Double> lengths, int index) {
    return index < lengths.size() ? Optional.of(new Strip(lengths.get(index))) : Optional.empty();
  }
}
