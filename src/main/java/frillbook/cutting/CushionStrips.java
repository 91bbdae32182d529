package frillbook.cutting;

import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/**
 * The strips that one cushion is made of where every cushion has its own: full ones and a last one,
 * which may be shorter.
 *
 * @param each strips of a cushion, the last included
 * @param last cut length of the last, at least; a shorter strip that is as long serves
 * @param inFull last strips that a full strip gives
 */
public record CushionStrips(int each, double last, int inFull) {

  /**
   * As many full strips as one cushion takes, the last as short as it may be. {@code full} is below
   * 0 where no strip lies on the fabric; the last is above 0 all the same.
   */
  public static CushionStrips of(Pieces pieces, Join join, double full) {
    double net = net(pieces, join, full);
    double need = pieces.netOfCushion(join);
    int each = Math.max(1, Rounding.up(need / net));
    double rest = (need - (each - 1) * net + join.loss()) / join.gain();
    double marked = Math.min(full, Rounding.upTo(pieces.markingStep(), rest));
    double last = Math.max(pieces.least(join), marked);
    return new CushionStrips(each, last, Math.max(1, Rounding.down(full / last)));
  }

  /** {@code each} strips of one {@code length}. */
  public static CushionStrips alike(int each, double length) {
    return new CushionStrips(each, length, 1);
  }

  /** How many of {@code odds} are long enough to be a cushion's last. */
  public int serving(List<OddPiece> odds) {
    return (int) odds.stream().filter(piece -> piece.odd() >= last - Rounding.TINY).count();
  }

  /**
   * What {@code full} strips and {@code shorter} ones that may serve as last are beyond those
   * wanted, in strips; below 0 there are too few.
   */
  public int over(Pieces pieces, int full, int shorter) {
    return full - pieces.spareStrips() - fullWanted(pieces, shorter);
  }

  /** Full strips for all cushions where so many {@code shorter} ones serve as last. */
  public int fullWanted(Pieces pieces, int shorter) {
    return pieces.cushions() * (each - 1) + fromFull(pieces.cushions(), shorter);
  }

  /** Full strips that are cut up into the last strips of {@code cushions}. */
  public int fromFull(int cushions, int shorter) {
    return Rounding.up((double) Math.max(0, cushions - shorter) / inFull);
  }

  /** What a full strip adds, which must be something. */
  public static double net(Pieces pieces, Join join, double full) {
    return Math.max(join.net(full), pieces.markingStep());
  }
}
