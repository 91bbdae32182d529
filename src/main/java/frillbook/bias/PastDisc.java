package frillbook.bias;

import frillbook.cutting.Pieces;
import frillbook.naming.Prefixed;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A bias strip cut past the discs that lie in a line along a long edge, the first of them in the
 * corner where full strips begin. The first cut line touches that disc; the strips run from the
 * other long edge up to the discs. Nothing here depends on the length of the fabric.
 *
 * @param pastNo from 1
 * @param pastReach its outer cut line, along the edge from the first cut line
 * @param pastDisc the last disc that it meets, from 0; the one before may reach further
 * @param pastTakes how far its end lies from the long edge with the discs, across the fabric
 */
public record PastDisc(
    int pastNo,
    double pastReach,
    int pastDisc,
    @Prefixed("past_one") PastRim one,
    @Prefixed("past_two") PastRim two,
    double pastTakes) {
  /** Strips considered; a longer line of discs is not. */
  public static final int MOST = 32;

  public static List<PastDisc> all(Pieces pieces, Join join, BiasSetting setting) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, pieces, join, setting)).toList();
  }

  private static PastDisc at(int number, Pieces pieces, Join join, BiasSetting setting) {
    double step = BiasCutting.lineStep(pieces);
    double reach = number * step;
    int disc = PastRim.lastMet(reach, pieces.discDiameter(), setting.lineCount());
    PastRim one = PastRim.of(pieces, join, setting, reach, disc);
    PastRim two = PastRim.of(pieces, join, setting, reach, Math.max(0, disc - 1));
    double corner = Math.max(setting.squareEnds(), setting.lineRim() - reach + step);
    double takes = Math.max(corner, Math.max(one.takes(), two.takes()));
    return new PastDisc(number, reach, disc, one, two, takes);
  }

  /**
   * Its extent across the fabric; its cut length is √2 times that.
   *
   * @param room where the cut line through the far end of the strips' own long edge lies, from the
   *     first cut line
   */
  double crosswise(double shorter, double room) {
    return shorter - pastTakes - Math.max(0, pastReach - room);
  }
}
