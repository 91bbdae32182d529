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
 * where it meets both edges. Lines reach the edge of the cloth, as they are cut, also where
 * slanting or square ends are trimmed off later.
 *
 * @param clothFirst bias lines in the near corner beyond which no strip is cut
 * @param clothComb strips between the lines
 * @param clothEvery 1 if every line is drawn, 2 if every second, and so on
 * @param clothFrom mark of the first line
 * @param clothStep half way from one drawn line to the next
 * @param clothLast mark of the last line
 */
public record CutLines(
    int clothFirst,
    int clothComb,
    int clothEvery,
    double clothFrom,
    double clothStep,
    double clothLast,
    @Prefixed("cloth_x_head") LineEnd xHead,
    @Prefixed("cloth_x_tail") LineEnd xTail,
    @Prefixed("cloth_y_head") LineEnd yHead,
    @Prefixed("cloth_y_tail") LineEnd yTail,
    double clothYFrom,
    List<CutPoint> clothCuts) {
  /** Lines drawn at most. */
  static final int MOST = 100;

  /**
   * An end of a cut line.
   *
   * @param clothCutMark the line's mark
   * @param clothCutX along the selvage
   * @param clothCutY across the cloth
   */
  public record CutPoint(double clothCutMark, double clothCutX, double clothCutY) {}

  private record Ends(LineEnd head, LineEnd tail) {
    double at(boolean isHead, double mark) {
      return (isHead ? head : tail).at(mark);
    }
  }

  static CutLines of(CutCloth cloth, List<ClothSide> sides) {
    double scale = cloth.scale();
    boolean bias = cloth.isBias();
    int inNear = sides.get(ClothSide.NEAR_LANE).sideCut();
    int first = bias ? cloth.bias().nearShort() - inNear : 0;
    int comb = cloth.cut().full() + inNear + sides.get(ClothSide.FAR_LANE).sideCut();
    double apart = bias ? cloth.lineStep() : cloth.stripWidth();
    double from = bias ? (cloth.bias().near() + first * apart) / scale : 0;
    int every = Math.max(1, Rounding.up(comb / (MOST - 1.0)));
    Ends run = run(cloth);
    Ends stack = stack(cloth);
    Ends x = cloth.turn() == 0 ? run : stack;
    Ends y = cloth.turn() == 0 ? stack : run;
    double step = apart * every / 2 / scale;
    double last = from + apart * comb / scale;
    double yFrom = cloth.turn() == 2 ? cloth.width() / scale : 0;
    List<CutPoint> points =
        IntStream.range(0, 2 * MOST)
            .mapToObj(i -> point(i, Math.min(last, from + step * (i - i % 2)), x, y, yFrom))
            .toList();
    return new CutLines(
        first, comb, every, from, step, last, x.head(), x.tail(), y.head(), y.tail(), yFrom,
        points);
  }

  /** Along the strips, or on the bias along the longer side. */
  private static Ends run(CutCloth cloth) {
    double scale = cloth.scale();
    return cloth.isBias()
        ? new Ends(
            new LineEnd(0, cloth.bias().longer() / scale),
            new LineEnd(cloth.bias().shorter() / scale, LineEnd.FREE))
        : new Ends(
            new LineEnd(-LineEnd.FREE, cloth.plan().stripLength() / scale), new LineEnd(0, 0));
  }

  /** Across the strips, or on the bias along the shorter side. */
  private static Ends stack(CutCloth cloth) {
    double scale = cloth.scale();
    return cloth.isBias()
        ? new Ends(
            new LineEnd(cloth.bias().longer() / scale, LineEnd.FREE),
            new LineEnd(0, cloth.bias().shorter() / scale))
        : new Ends(LineEnd.MARK, LineEnd.MARK);
  }

  private static CutPoint point(int index, double mark, Ends x, Ends y, double yFrom) {
    boolean head = (index + 1) / 2 % 2 == 0;
    return new CutPoint(
        mark, Rounding.drawn(x.at(head, mark)), Rounding.drawn(Math.abs(yFrom - y.at(head, mark))));
  }
}
