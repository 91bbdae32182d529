package frillbook.rows;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.measure.Rounding;

/**
 * The equal parts that strip and sewn line are gathered in, each short enough to be pulled up.
 *
 * <p>A spiral has parts from end to end, of separate rings each has its own; these are those of the
 * outermost.
 *
 * @param gatherParts 350 in by 12 at most are 30
 * @param stitchedPart between gathering marks along the sewn line, in the unit of the brief
 */
public record GatherParts(int gatherParts, double stitchedPart) {

  public static GatherParts of(Brief brief, Rings rings) {
    double gathered =
        isSpiral(brief)
            ? rings.stitchedLength()
            : rings.rings().get(rings.ringCount() - 1).ringLength();
    int parts = parts(brief, gathered);
    return new GatherParts(parts, gathered / parts);
  }

  /** Gathering marks met while {@code ring} is sewn; the last of a separate ring is its end. */
  int marksIn(Brief brief, Ring ring) {
    return isSpiral(brief)
        ? marksTo(ring.runningStitched()) - marksTo(ring.runningStitched() - ring.ringLength())
        : parts(brief, ring.ringLength());
  }

  private int marksTo(double stitched) {
    return Rounding.down(stitched / stitchedPart);
  }

  private static int parts(Brief brief, double length) {
    return Rounding.up(length / brief.frill().gatherSection());
  }

  private static boolean isSpiral(Brief brief) {
    return brief.cushion().rowStyle() == RowStyle.SPIRAL;
  }
}
