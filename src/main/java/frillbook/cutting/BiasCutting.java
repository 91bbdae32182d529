package frillbook.cutting;

import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/** Bias strips and discs on one cloth. */
public record BiasCutting(Cloth cloth, Pieces pieces, Join join, List<BesideDisc> beside) {
  /** Shortened strips considered in each corner; the tip beyond them is left as offcut. */
  public static final int MOST = 32;

  private static final double ROOT2 = Math.sqrt(2);

  /**
   * Where the first cut line clear of a disc meets both edges: d + d/√2 from the corner the disc is
   * pushed into.
   */
  static double reachOfDisc(Pieces pieces) {
    return pieces.discDiameter() * (1 + 1 / ROOT2);
  }

  /** Distance of neighbouring cut lines along the edge: the strip's width times √2. */
  public double lineStep() {
    return pieces.stripWidth() * ROOT2;
  }

  /** What square ends take off the waist; 0 for slanting ends. */
  double squareEnds() {
    return join.diagonal() ? 0 : pieces.stripWidth() / ROOT2;
  }

  double least() {
    return join.shortestUseful(pieces.shortestPiece());
  }

  double reach(boolean disc) {
    return disc ? reachOfDisc(pieces) : least() / ROOT2;
  }

  int cornerDiscs() {
    return Math.min(2, pieces.discCount());
  }

  /** Length of the straight bands that hold the discs not in a corner. */
  double bands(int cornerDiscs) {
    int perBand = Rounding.down(cloth.usableWidth() / pieces.discDiameter());
    return Rounding.up((double) (pieces.discCount() - cornerDiscs) / perBand)
        * pieces.discDiameter();
  }

  double besideNet(double shorter, double slack) {
    return beside.stream().mapToDouble(b -> b.net(join, least(), shorter, slack)).sum();
  }

  /** Every length tried, in order. */
  List<BiasTrial> trials() {
    return Halving.search(this::attempt);
  }

  private BiasTrial attempt(int steps, int tooSmall) {
    double usable = steps * cloth.buyStep() * cloth.usableShare();
    BiasComb ends = BiasComb.of(this, usable - bands(0), 0);
    BiasComb corners = BiasComb.of(this, usable - bands(cornerDiscs()), cornerDiscs());
    boolean enough = Rounding.settle(Math.max(ends.over(), corners.over())) >= 0;
    return new BiasTrial(steps, usable, ends, corners, enough, enough ? tooSmall : steps);
  }

  List<CornerStrips> cornerStrips(BiasTrial trial) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> cornerStrips(trial, n)).toList();
  }

  private CornerStrips cornerStrips(BiasTrial trial, int number) {
    BiasComb comb = trial.better();
    int discs = trial.usesCorners() ? cornerDiscs() : 0;
    int farCount = Math.min(comb.farShort(), comb.lanes() - comb.nearShort());
    double further = (number - 1) * lineStep();
    double nearSlack = comb.nearSlack(this, discs);
    double farSlack = comb.farSlack(this, discs);
    return new CornerStrips(
        number,
        number <= comb.nearShort() ? comb.strip(comb.near() + further, lineStep()) : 0,
        number <= farCount ? comb.strip(comb.far() + further, lineStep()) : 0,
        piece(discs >= 1, number, true, comb.shorter(), nearSlack),
        piece(discs >= 1, number, false, comb.shorter(), nearSlack),
        piece(discs >= 2, number, true, comb.shorter(), farSlack),
        piece(discs >= 2, number, false, comb.shorter(), farSlack));
  }

  private double piece(boolean disc, int number, boolean right, double shorter, double slack) {
    if (!disc || number > beside.size()) {
      return 0;
    }
    BesideDisc strip = beside.get(number - 1);
    return strip.piece(
        right ? strip.besideRight() : strip.besideLeft(), least(), shorter, slack);
  }

  List<OddPiece> odd(List<CornerStrips> corners) {
    return OddPiece.sorted(corners.stream().flatMapToDouble(CornerStrips::lengths), join);
  }
}
