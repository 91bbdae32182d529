package frillbook.cutting;

import frillbook.measure.Rounding;
import java.util.List;

/**
 * How many of the strips a layout offers are cut: full strips first, then the longest of the
 * others, until the run and the spares are reached.
 *
 * @param fullCut full strips
 * @param oddNeed net length the shorter strips must still add
 * @param oddCut shorter strips
 * @param stripCount both together
 * @param joinCount joins in the run, spares left out
 */
public record Cut(int fullCut, double oddNeed, int oddCut, int stripCount, int joinCount) {

  static Cut of(Pieces pieces, Join join, int full, double fullStrip, List<OddPiece> odd) {
    double need = join.netNeeded(pieces, fullStrip);
    double each = join.net(fullStrip);
    int fullCut = Math.min(full, Rounding.up(need / each));
    double oddNeed = need - fullCut * each;
    int oddCut = oddNeed <= Rounding.TINY ? 0 : 1 + tooFew(odd, oddNeed);
    int strips = fullCut + oddCut;
    int joins = Math.max(0, strips - pieces.spareStrips() - 1);
    return new Cut(fullCut, oddNeed, oddCut, strips, joins);
  }

  private static int tooFew(List<OddPiece> odd, double need) {
    return (int) odd.stream().filter(p -> p.oddJoined() < need - Rounding.TINY).count();
  }
}
