package frillbook.bias;

import frillbook.cutting.Fabric;
import frillbook.cutting.Halving;
import frillbook.cutting.OddPiece;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;

/** Bias strips and discs on one fabric. */
public record BiasCutting(Fabric fabric, Pieces pieces, Join join, List<BesideDisc> beside) {
  /** Shortened strips considered in each corner; the tip beyond them is left as offcut. */
  public static final int MOST = 24;

  private static final double ROOT2 = Math.sqrt(2);

  /** Distance of neighbouring cut lines along the edge: the strip's width times √2. */
  public double lineStep() {
    return pieces.stripWidth() * ROOT2;
  }

  double least() {
    return join.shortestUseful(pieces.shortestPiece());
  }

  double reach(boolean disc) {
    return disc ? setting().discReach() : setting().tip();
  }

  /** What every length tried has in common. */
  public BiasSetting setting() {
    return BiasSetting.of(this);
  }

  /** Every length tried, in order. */
  public List<BiasTrial> trials(int searchRows) {
    return Halving.search(searchRows, this::attempt);
  }

  /** Whether {@code steps} buy steps are enough, where {@code tooSmall} are known not to be. */
  public BiasTrial attempt(int steps, int tooSmall) {
    double usable = steps * fabric.buyStep() * fabric.usableShare();
    BiasComb ends = BiasComb.of(this, usable - setting().endsBand(), 0);
    BiasComb corners = BiasComb.of(this, usable - setting().cornersBand(), setting().cornerCount());
    BesidePieces near = corners.nearPieces(this, setting().cornerCount());
    BesidePieces far = corners.farPieces(this, setting().cornerCount());
    boolean enough = Rounding.settle(Math.max(ends.over(), corners.over())) >= 0;
    return new BiasTrial(
        steps, usable, ends, corners, near, far, enough, enough ? tooSmall : steps);
  }

  List<CornerStrips> cornerStrips(BiasTrial trial) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> cornerStrips(trial, n)).toList();
  }

  private CornerStrips cornerStrips(BiasTrial trial, int number) {
    BiasComb comb = trial.better();
    int discs = trial.usesCorners() ? setting().cornerCount() : 0;
    int farCount = Math.min(comb.farShort(), comb.laneCount() - comb.nearShort());
    double further = (number - 1) * lineStep();
    return new CornerStrips(
        number,
        number <= comb.nearShort() ? comb.strip(comb.near() + further, lineStep()) : 0,
        number <= farCount ? comb.strip(comb.far() + further, lineStep()) : 0,
        piece(discs >= 1, number, true, comb.shorter(), comb.nearSlack()),
        piece(discs >= 1, number, false, comb.shorter(), comb.nearSlack()),
        piece(discs >= 2, number, true, comb.shorter(), comb.farSlack()),
        piece(discs >= 2, number, false, comb.shorter(), comb.farSlack()));
  }

  private double piece(boolean disc, int number, boolean right, double shorter, double slack) {
    if (!disc || number > beside.size()) {
      return 0;
    }
    BesideDisc strip = beside.get(number - 1);
    return strip.piece(right ? strip.besideRight() : strip.besideLeft(), least(), shorter, slack);
  }

  List<OddPiece> odd(List<CornerStrips> corners) {
    return OddPiece.sorted(corners.stream().flatMapToDouble(CornerStrips::lengths), join);
  }
}
