package frillbook.cutting;

import frillbook.measure.Rounding;
import java.util.List;

/**
 * Strips that add up to a need: full strips first, then the longest of the others.
 *
 * @param need net length wanted
 * @param full full strips
 * @param oddNeed net length the shorter strips must still add
 * @param odd shorter strips
 * @param count both together
 */
public record Tally(double need, int full, double oddNeed, int odd, int count) {

  /** Strips out of {@code offered} full ones, each adding {@code each}, and {@code odds}. */
  static Tally of(double need, int offered, double each, List<OddPiece> odds) {
    int full = Math.min(offered, Rounding.up(need / each));
    double oddNeed = need - full * each;
    int odd = oddNeed <= Rounding.TINY * Math.max(1, each) ? 0 : 1 + tooFew(odds, oddNeed);
    return new Tally(need, full, oddNeed, odd, full + odd);
  }

  private static int tooFew(List<OddPiece> odds, double need) {
    return (int) odds.stream().filter(p -> p.oddJoined() < need - Rounding.TINY).count();
  }
}
