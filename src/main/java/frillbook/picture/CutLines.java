package frillbook.picture;

import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cut lines that run from edge to edge, as one line that goes to and fro; 1 is the height of
 * the picture.
 *
 * <p>A line's mark is its distance from the first edge, or on the bias from the near corner to
 * where it meets both edges. Lines reach the edge of the fabric, as they are cut, also where
 * slanting or square ends are trimmed off later.
 *
 * @param fabricFirst bias lines in the near corner beyond which no strip is cut
 * @param fabricComb strips between the lines
 * @param fabricEvery 1 if every line is drawn, 2 if every second, and so on
 * @param fabricFrom mark of the first line
 * @param fabricStep half way from one drawn line to the next
 * @param fabricLast mark of the last line
 */
public record CutLines(
    int fabricFirst,
    int fabricComb,
    int fabricEvery,
    double fabricFrom,
    double fabricStep,
    double fabricLast,
    @Prefixed("fabric_x_head") LineEnd xHead,
    @Prefixed("fabric_x_tail") LineEnd xTail,
    @Prefixed("fabric_y_head") LineEnd yHead,
    @Prefixed("fabric_y_tail") LineEnd yTail,
    double fabricYFrom,
    List<CutPoint> fabricCuts) {
  /** Lines drawn at most. */
  static final int MOST = 100;

  /**
   * An end of a cut line.
   *
   * @param fabricCutMark the line's mark
   * @param fabricCutX along the selvage
   * @param fabricCutY across the fabric
   */
  public record CutPoint(double fabricCutMark, double fabricCutX, double fabricCutY) {}

  private record Ends(LineEnd head, LineEnd tail) {
    double at(boolean isHead, double mark) {
      return (isHead ? head : tail).at(mark);
    }
  }

  static CutLines of(CutFabric fabric, List<FabricSide> sides) {
    double scale = fabric.scale();
    boolean bias = fabric.isBias();
    int inNear = sides.get(FabricSide.NEAR_LANE).sideCut();
    int first = bias ? fabric.bias().nearShort() - inNear : 0;
    int comb = fabric.cut().full() + inNear + sides.get(FabricSide.FAR_LANE).sideCut();
    double apart = bias ? fabric.lineStep() : fabric.stripWidth();
    double from = bias ? (fabric.bias().near() + first * apart) / scale : 0;
    int every = Math.max(1, Rounding.up(comb / (MOST - 1.0)));
    Ends run = run(fabric);
    Ends stack = stack(fabric);
    Ends x = fabric.turn() == 0 ? run : stack;
    Ends y = fabric.turn() == 0 ? stack : run;
    double step = apart * every / 2 / scale;
    double last = from + apart * comb / scale;
    double yFrom = fabric.turn() == 2 ? fabric.width() / scale : 0;
    List<CutPoint> points =
        IntStream.range(0, 2 * MOST)
            .mapToObj(i -> point(i, Math.min(last, from + step * (i - i % 2)), x, y, yFrom))
            .toList();
    return new CutLines(
        first, comb, every, from, step, last, x.head(), x.tail(), y.head(), y.tail(), yFrom,
        points);
  }

  /** Along the strips, or on the bias along the longer side. */
  private static Ends run(CutFabric fabric) {
    double scale = fabric.scale();
    return fabric.isBias()
        ? new Ends(
            new LineEnd(0, fabric.bias().longer() / scale),
            new LineEnd(fabric.bias().shorter() / scale, LineEnd.FREE))
        : new Ends(
            new LineEnd(-LineEnd.FREE, fabric.plan().stripLength() / scale), new LineEnd(0, 0));
  }

  /** Across the strips, or on the bias along the shorter side. */
  private static Ends stack(CutFabric fabric) {
    double scale = fabric.scale();
    return fabric.isBias()
        ? new Ends(
            new LineEnd(fabric.bias().longer() / scale, LineEnd.FREE),
            new LineEnd(0, fabric.bias().shorter() / scale))
        : new Ends(LineEnd.MARK, LineEnd.MARK);
  }

  private static CutPoint point(int index, double mark, Ends x, Ends y, double yFrom) {
    boolean head = (index + 1) / 2 % 2 == 0;
    return new CutPoint(
        mark, Rounding.drawn(x.at(head, mark)), Rounding.drawn(Math.abs(yFrom - y.at(head, mark))));
  }
}
