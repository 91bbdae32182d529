package frillbook.picture;

import frillbook.bias.BiasPlan;
import frillbook.bias.CornerStrips;
import frillbook.brief.Brief;
import frillbook.cutting.GrainPlan;
import frillbook.cutting.Tally;
import frillbook.discs.DiscSizes;
import frillbook.grains.GrainPlans;
import frillbook.grains.OddRow;
import frillbook.measure.Rounding;
import frillbook.offcut.OnTable;
import frillbook.straight.LaneRow;
import frillbook.straight.LaneStrip;
import frillbook.straight.StraightPlan;
import java.util.List;
import java.util.stream.DoubleStream;

/** The frill fabric as it is cut in the chosen grain; lengths in the unit of the brief. */
public record CutFabric(Brief brief, OnTable table) {
  /** Fabric is bought longer than wide. */
  private static final double WIDE = 2;

  GrainPlans layouts() {
    return table.layouts();
  }

  GrainPlan plan() {
    return table.plan();
  }

  DiscSizes discs() {
    return table.sizes();
  }

  double width() {
    return table.usableWidth();
  }

  double stripWidth() {
    return table.stripWidth();
  }

  double lineStep() {
    return table.lineStep();
  }

  boolean isBias() {
    return table.isBias();
  }

  boolean isLengthwise() {
    return table.isLengthwise();
  }

  BiasPlan bias() {
    return table.bias();
  }

  StraightPlan straight() {
    return table.straight();
  }

  Tally cut() {
    return plan().cut().all();
  }

  double length() {
    return plan().usableLength();
  }

  /** What is 1 in the picture: its height. */
  double scale() {
    return Math.max(length() / WIDE, width());
  }

  /** The corner of the fabric opposite to where places are counted from, in the picture. */
  Spot farCorner() {
    return new Spot(length() / scale(), width() / scale());
  }

  /**
   * How the strips lie: 0 along the fabric, 1 across it, 2 across it from the other selvage; on the
   * bias it is the longer side that lies so.
   */
  int turn() {
    if (isBias()) {
      return length() - bias().bandLength() >= width() ? 0 : 2;
    }
    return isLengthwise() ? 0 : 1;
  }

  /** How much further along the strip its second long side begins: slanting ends. */
  double shift() {
    return isBias() && brief.joins().joinLine().isDiagonal(table.grain()) ? stripWidth() : 0;
  }

  boolean isLonger(double piece) {
    return piece > layouts().shortestStrip(plan()) + Rounding.TINY;
  }

  boolean reaches(double piece) {
    return table.mayBeCut(piece);
  }

  /** Shorter strips that are surely cut, for they are longer than the shortest that is. */
  int oddSure() {
    return cut().odd() == 0 ? 0 : count(layouts().odds().stream().mapToDouble(OddRow::oddPiece));
  }

  private int count(DoubleStream pieces) {
    return (int) pieces.filter(this::isLonger).count();
  }

  /** Strips cut of those that are as long as the shortest; others of that length stay over. */
  int oddTies() {
    return cut().odd() - oddSure();
  }

  /** Strips past a line of discs that lines are drawn for: all if any shorter strip is cut. */
  int past() {
    return isBias() && cut().odd() > 0 ? bias().lineStrips() : 0;
  }

  boolean isApart() {
    return !isBias() && straight().isApart();
  }

  boolean isZigzag() {
    return !isBias() && straight().isZigzag();
  }

  /**
   * Full strips side by side; those that lie end to end count once. On the bias those that stay
   * over are among them where strips {@code inFarCorner} are cut behind them.
   */
  int fullLanes(int inFarCorner) {
    return isBias() && inFarCorner > 0 ? bias().full() : fullLanes();
  }

  int fullLanes() {
    return isBias() ? cut().full() : table.fullLanes();
  }

  /** Extent of the fabric along straight strips. */
  double run() {
    return isLengthwise() ? length() : width();
  }

  boolean cutsFullBeside() {
    return table.cutsFullBeside();
  }

  /** Lanes beside the discs that full strips are cut from, so many as are drawn. */
  int lanesOfFull() {
    return cutsFullBeside() ? Math.min(2 * BesideStrips.MOST, straight().laneCount()) : 0;
  }

  /** Full lengthwise strips that are cut and not drawn. */
  int fullLeft() {
    StraightPlan plan = straight();
    int whole = Math.min(plan.whole(), lanesOfFull());
    int drawn =
        fullLanes() * drawn(plan.perLane())
            + whole * drawn(plan.moreWhole())
            + (lanesOfFull() - whole) * drawn(plan.moreLast());
    return isLengthwise() ? Math.max(0, cut().full() - drawn) : 0;
  }

  private static int drawn(int endToEnd) {
    return Math.min(StripEnd.Division.MOST, endToEnd);
  }

  /** What full strips take of the lane {@code number} beside the discs. */
  double fullBeside(int number) {
    int more = number <= straight().whole() ? straight().moreWhole() : straight().moreLast();
    return cutsFullBeside() ? more * plan().stripLength() : 0;
  }

  /** Lanes beside discs that strips are cut from; straight grain. */
  int lanes() {
    return cut().odd() == 0 && !cutsFullBeside()
        ? 0
        : Math.min(layouts().lanes().size(), straight().laneCount());
  }

  /** What the lane {@code number}, from 1, beside the discs offers; straight grain. */
  LaneStrip lane(int number) {
    LaneRow row = layouts().lanes().get(number - 1);
    return isLengthwise() ? row.lengthwise() : row.crosswise();
  }

  List<CornerStrips> corners() {
    return layouts().corners();
  }
}
