package frillbook.picture;

import frillbook.bias.PastDisc;
import frillbook.measure.Rounding;
import frillbook.picture.BesideStrips.BesideStrip;
import frillbook.straight.StraightPlan;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A point of the line along the ends of strips that do not run from edge to edge.
 *
 * <p>On the bias these are the strips past a line of discs: from the short edge along the cut line
 * that touches the first disc, across the end of every strip, and along the last cut line to the
 * long edge.
 *
 * <p>Lengthwise they are those that lie end to end, counted from the far end: across all lanes that
 * hold a strip there, to and back from the first selvage, then across those of the last line of
 * discs alone, to and back from the last lane.
 *
 * <p>Where two discs lie apart they are those that end at the far disc, lane by lane.
 *
 * <p>All points lie in the near corner where there are no such strips.
 *
 * @param stripEndStack across, on the bias towards the discs, in the unit of the brief
 * @param stripEndRun along the strips, on the bias along the longer side
 * @param stripEndX along the selvage; 1 is the height of the picture
 * @param stripEndY across the fabric
 */
public record StripEnd(
    double stripEndStack, double stripEndRun, double stripEndX, double stripEndY) {
  /** Two ends of every strip past a line of discs, and one at either edge. */
  private static final int MOST = 2 * PastDisc.MOST + 2;

  private static final StripEnd NONE = new StripEnd(0, 0, 0, 0);

  static List<StripEnd> all(CutFabric fabric, int past, BesideStrips near, BesideStrips far) {
    List<BesideStrip> stair = stair(fabric, near, far);
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, fabric, past, stair)).toList();
  }

  private static StripEnd at(int number, CutFabric fabric, int past, List<BesideStrip> stair) {
    if (past > 0) {
      return pastDiscs(number, fabric, past);
    }
    if (!stair.isEmpty()) {
      return beforeDisc(number, fabric, stair);
    }
    return fabric.isLengthwise() ? Division.end(number, fabric) : NONE;
  }

  /** Strips that end at a disc on their far side. */
  private static List<BesideStrip> stair(CutFabric fabric, BesideStrips near, BesideStrips far) {
    Stream<BesideStrip> nearer = fabric.isApart() ? drawn(near) : Stream.of();
    Stream<BesideStrip> farther = fabric.isApart() || fabric.isZigzag() ? drawn(far) : Stream.of();
    return Stream.concat(nearer, farther).toList();
  }

  private static Stream<BesideStrip> drawn(BesideStrips strips) {
    return strips.besideRows().stream().limit(strips.besideStrips());
  }

  private static StripEnd beforeDisc(int number, CutFabric fabric, List<BesideStrip> stair) {
    BesideStrip strip = stair.get(Math.min(stair.size(), (number + 1) / 2) - 1);
    double stack = number % 2 == 1 ? strip.deeps().one() : strip.deeps().two();
    double run = strip.runs().one();
    return fabric.turn() > 0
        ? placed(stack, run, stack, run, fabric)
        : placed(stack, run, run, stack, fabric);
  }

  private static StripEnd pastDiscs(int number, CutFabric fabric, int strips) {
    double stack = stack(number, fabric, strips);
    int line = Math.min(strips, (number - 1) / 2);
    double mark = fabric.bias().lineFirst() + line * fabric.lineStep();
    double run = Math.max(0, Math.min(fabric.bias().longer(), mark - stack));
    return fabric.turn() > 0
        ? placed(stack, run, stack, fabric.width() - run, fabric)
        : placed(stack, run, run, stack, fabric);
  }

  private static StripEnd placed(double stack, double run, double x, double y, CutFabric fabric) {
    double scale = fabric.scale();
    return new StripEnd(stack, run, Rounding.drawn(x / scale), Rounding.drawn(y / scale));
  }

  private static double stack(int number, CutFabric fabric, int strips) {
    if (number == 1) {
      return fabric.bias().lineFirst();
    }
    boolean over = number > 2 * strips + 1;
    double takes = over ? 0 : fabric.layouts().past().get(number / 2 - 1).pastTakes();
    boolean outer = !over && number % 2 == 1;
    double further = outer ? fabric.layouts().biasSetting().squareEnds() : 0;
    return fabric.bias().shorter() - takes + further;
  }

  /** Where lengthwise lanes are cut into strips. */
  static final class Division {
    /** Divisions drawn at most. */
    static final int MOST = 10;

    private static final int LAST_LINE = 3 * MOST + 3;

    private Division() {}

    static StripEnd end(int number, CutFabric fabric) {
      if (number < LAST_LINE) {
        int drawn = Math.min(MOST, fabric.straight().perLane());
        return number < LAST_LINE - 2
            ? across(Math.min(drawn, (number - 1) / 3 + 1), number % 3 == 2, fabric)
            : onFarEdge(number == LAST_LINE - 1, fabric);
      }
      return acrossLastLine(divisionOfLastLine(number, fabric), number % 3 == 1, fabric);
    }

    private static StripEnd across(int division, boolean deep, CutFabric fabric) {
      StraightPlan plan = fabric.straight();
      int everywhere = plan.whole() > 0 ? plan.moreWhole() : plan.moreLast();
      int lanes = fabric.fullLanes() + (division <= everywhere ? fabric.lanesOfFull() : 0);
      return at(division, deep ? lanes : 0, fabric);
    }

    private static StripEnd onFarEdge(boolean last, CutFabric fabric) {
      return at(0, last ? fabric.fullLanes() + fabric.lanesOfFull() : 0, fabric);
    }

    /** 0, which is the far edge, where every lane holds as many. */
    private static int divisionOfLastLine(int number, CutFabric fabric) {
      StraightPlan plan = fabric.straight();
      boolean isLonger = plan.whole() > 0 && plan.moreLast() > plan.moreWhole();
      int most = Math.min(MOST, plan.moreLast());
      return fabric.cutsFullBeside() && isLonger
          ? Math.min(most, plan.moreWhole() + (number - LAST_LINE) / 3 + 1)
          : 0;
    }

    private static StripEnd acrossLastLine(int division, boolean deep, CutFabric fabric) {
      int whole = Math.min(fabric.straight().whole(), fabric.lanesOfFull());
      return at(division, fabric.fullLanes() + (deep ? whole : fabric.lanesOfFull()), fabric);
    }

    private static StripEnd at(int division, int lanes, CutFabric fabric) {
      double run = fabric.run() - division * fabric.plan().stripLength();
      double stack = lanes * fabric.stripWidth();
      return placed(stack, run, run, stack, fabric);
    }
  }
}
