package frillbook.bias;

import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.straight.Lane;
import frillbook.strip.Join;

/**
 * What one disc of the line takes of a strip that is cut past it. Places are measured along the
 * edge, as those of cut lines are, from where the line through the disc's centre meets it.
 *
 * @param offset of the strip's inner cut line; negative before the centre
 * @param nearest where the strip's end comes closest to the rim, within the disc: a slanting end
 *     where the rim runs at 45° to the strip, a square one in the middle
 * @param takes how far the strip's end lies from the long edge, across the fabric; the end of a
 *     square strip that of its inner cut line
 */
record PastRim(double offset, double nearest, double takes) {

  static PastRim of(Pieces pieces, Join join, BiasSetting setting, double reach, int disc) {
    double radius = pieces.discRadius();
    double rim = setting.lineRim();
    double step = BiasCutting.lineStep(pieces);
    double offset = reach - step - rim - disc * pieces.discDiameter();
    boolean slanting = join.diagonal();
    double touch = slanting ? -radius : 0;
    double beside = Math.min(Math.max(offset, touch), offset + step);
    double nearest = Math.max(-rim, Math.min(rim, beside));
    double crosswise = slanting ? nearest : Math.min(offset, rim);
    double chord = Lane.halfChord(rim, nearest);
    return new PastRim(offset, nearest, radius - crosswise / 2 + chord / 2);
  }

  /**
   * The last disc of {@code count} that a strip whose outer cut line lies at {@code reach} meets.
   */
  static int lastMet(double reach, double diameter, int count) {
    return Math.max(0, Math.min(count, Rounding.up(reach / diameter)) - 1);
  }
}
