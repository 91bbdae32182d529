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
 * <p>Where discs lie in a line along a long edge, two lines and the end of the strip between them
 * are drawn at a time.
 *
 * @param fabricPast strips past a line of discs, cut or not
 * @param fabricFirst bias lines from the near corner beyond which no strip is cut
 * @param fabricComb strips between the lines
 * @param fabricEvery 1 if every line is drawn, 2 if every second, and so on
 * @param fabricFrom mark of the first line
 * @param fabricStep half way from one drawn line to the next
 * @param fabricLast mark of the last line
 */
public record CutLines(
    int fabricPast,
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
  static final int MOST = 64;

  private static final Spot NOWHERE = new Spot(0, 0);

  /**
   * An end of a cut line.
   *
   * @param fabricCutX along the selvage
   * @param fabricCutY across the fabric
   * @param fabricTint half-way to the next line's, of one strip after the other
   */
  public record CutPoint(
      double fabricCutX, double fabricCutY, @Prefixed("fabric_tint") Spot fabricTint) {
    private Spot end() {
      return new Spot(fabricCutX, fabricCutY);
    }

    private CutPoint tinted(Spot middle) {
      return new CutPoint(fabricCutX, fabricCutY, middle);
    }
  }

  private record Ends(LineEnd head, LineEnd tail) {
    double at(boolean isHead, double mark, double takes, boolean across) {
      return isHead ? head.at(mark, 0, false) : tail.at(mark, takes, across);
    }
  }

  static CutLines of(CutFabric fabric, List<FabricSide> sides) {
    double scale = fabric.scale();
    boolean bias = fabric.isBias();
    int inNear = cut(sides, FabricSide.NEAR_LANE, FabricSide.NEAR_PAIR);
    int inFar = cut(sides, FabricSide.FAR_LANE, FabricSide.FAR_PAIR);
    int past = fabric.past();
    int first = bias ? fabric.bias().nearShort() - inNear + fabric.bias().lineStrips() - past : 0;
    int comb = fabric.fullLanes(inFar) + inNear + inFar + past;
    double apart = bias ? fabric.lineStep() : fabric.stripWidth();
    double from = bias ? (fabric.bias().near() + first * apart) / scale : 0;
    int every = Math.max(1, Rounding.up(comb / (MOST - 1.0)));
    Ends run = run(fabric);
    Ends stack = stack(fabric);
    Ends x = fabric.turn() == 0 ? run : stack;
    Ends y = fabric.turn() == 0 ? stack : run;
    double step = apart * every / 2 / scale;
    double last = Math.min(from + apart * comb / scale, end(fabric) / scale);
    double yFrom = fabric.turn() == 2 ? fabric.width() / scale : 0;
    CutLines lines =
        new CutLines(
            past, first, comb, every, from, step, last, x.head(), x.tail(), y.head(), y.tail(),
            yFrom, List.of());
    return lines.drawn(fabric, x, y);
  }

  static int cut(List<FabricSide> sides, int singles, int paired) {
    return sides.get(singles).sideCut() + sides.get(paired).sideCut();
  }

  /** The mark beyond which there is no fabric. */
  private static double end(CutFabric fabric) {
    return fabric.isBias() ? fabric.bias().longer() + fabric.bias().shorter() : 2 * fabric.scale();
  }

  private CutLines drawn(CutFabric fabric, Ends x, Ends y) {
    List<CutPoint> points =
        tinted(
            IntStream.range(0, 2 * MOST).mapToObj(i -> point(i, fabric, x, y)).toList(),
            fabric.farCorner());
    return new CutLines(
        fabricPast,
        fabricFirst,
        fabricComb,
        fabricEvery,
        fabricFrom,
        fabricStep,
        fabricLast,
        xHead,
        xTail,
        yHead,
        yTail,
        fabricYFrom,
        points);
  }

  /**
   * With the line down the middles of the strips. It goes up one and down the next, as the cut
   * lines do, and ends with the last strip.
   */
  private List<CutPoint> tinted(List<CutPoint> ends, Spot far) {
    int last = 2 * Rounding.up((double) fabricComb / fabricEvery);
    return IntStream.range(0, ends.size())
        .mapToObj(
            index ->
                ends.get(index).tinted(middle(Math.max(0, Math.min(index, last - 1)), ends, far)))
        .toList();
  }

  /** A line's two ends come one after the other, and those of the next the other way about. */
  private static Spot middle(int index, List<CutPoint> ends, Spot far) {
    int across = index % 2 == 0 ? index + 3 : index + 1;
    return ends.get(index).end().halfway(ends.get(across).end(), far);
  }

  /** Along the strips, or on the bias along the longer side. */
  private static Ends run(CutFabric fabric) {
    double scale = fabric.scale();
    return fabric.isBias()
        ? new Ends(
            new LineEnd(0, fabric.bias().longer() / scale),
            new LineEnd(fabric.bias().shorter() / scale, fabric.bias().longer() / scale))
        : new Ends(new LineEnd(-LineEnd.FREE, fabric.run() / scale), new LineEnd(0, 0));
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

  private CutPoint point(int index, CutFabric fabric, Ends x, Ends y) {
    boolean head = (index + 1) / 2 % 2 == 0;
    double mark = Math.min(fabricLast, fabricFrom + fabricStep * (index - index % 2));
    int shortened = fabric.isBias() ? fabric.bias().nearShort() : 0;
    int row = fabricFirst - shortened + (2 * (index / 4) + 1) * fabricEvery;
    double takes = takes(row, index % 4 == 2, fabric) / fabric.scale();
    boolean turned = fabric.turn() > 0;
    return new CutPoint(
        Rounding.drawn(x.at(head, mark, takes, turned)),
        Rounding.drawn(Math.abs(fabricYFrom - y.at(head, mark, takes, !turned))),
        NOWHERE);
  }

  /** Where not every line is drawn, a whole disc. The end of a square strip lies at 45° as well. */
  private double takes(int row, boolean outer, CutFabric fabric) {
    if (fabricPast == 0 || row < 1 || row > fabricPast - 1 + fabricEvery) {
      return 0;
    }
    if (fabricEvery > 1) {
      return fabric.discs().baseCutDiameter();
    }
    double takes = fabric.layouts().past().get(row - 1).pastTakes();
    return outer ? takes - fabric.layouts().biasSetting().squareEnds() : takes;
  }
}
