package frillbook.bias;

import frillbook.cutting.Fabric;
import frillbook.cutting.Halving;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Bias strips and discs on one fabric.
 *
 * @param setting what every length tried has in common
 * @param beside what a disc in a corner leaves of the strips beside it
 * @param past what a line of discs leaves of the strips past it
 */
public record BiasCutting(
    Fabric fabric,
    Pieces pieces,
    Join join,
    BiasSetting setting,
    List<BesideDisc> beside,
    List<PastDisc> past) {
  /** Bias strips of {@code pieces}, and what discs leave of some of them. */
  public static BiasCutting of(Fabric fabric, Pieces pieces, Join join) {
    BiasSetting setting = BiasSetting.of(fabric, pieces, join);
    return new BiasCutting(
        fabric,
        pieces,
        join,
        setting,
        BesideDisc.all(pieces, join),
        PastDisc.all(pieces, join, setting));
  }

  /** Shortened strips considered in each corner; the tip beyond them is left as offcut. */
  public static final int MOST = 24;

  /** The same where strips are cut past a line of discs besides. */
  static final int MOST_WITH_LINE = 20;

  private static final double ROOT2 = Math.sqrt(2);

  /** Distance of neighbouring cut lines along the edge: the strip's width times √2. */
  public double lineStep() {
    return lineStep(pieces);
  }

  static double lineStep(Pieces pieces) {
    return pieces.stripWidth() * ROOT2;
  }

  /** Cut length of the shortest strip worth joining. */
  double least() {
    return least(pieces, join);
  }

  static double least(Pieces pieces, Join join) {
    return join.shortestUseful(pieces.shortestPiece());
  }

  double reach(boolean disc) {
    return disc ? setting.discReach() : setting.tip();
  }

  /** Where the cut line that touches the first disc of a line meets both edges. */
  double firstPast(double shorter) {
    return shorter - setting.lineRim();
  }

  /** What a strip of {@code length} adds, or 1 for a strip that may be a cushion's last. */
  double worth(double length) {
    return pieces.ownStrips() ? 1 : join.net(length);
  }

  /** Cut length of a strip past a line of discs; 0 where it is shorter than {@code least}. */
  double pastPiece(PastDisc strip, double shorter, double room, double least) {
    double crosswise = strip.crosswise(shorter, room);
    boolean useful = crosswise >= least / ROOT2 - Rounding.TINY;
    return useful && strip.pastNo() <= setting.lineRows() ? ROOT2 * crosswise : 0;
  }

  /** Every length tried, in order. */
  public List<BiasTrial> trials(SearchReach reach) {
    return Halving.search(reach, this::attempt);
  }

  /** Whether {@code steps} buy steps are enough, where {@code tooSmall} are known not to be. */
  public BiasTrial attempt(int steps, int tooSmall) {
    double usable = fabric.usable(steps * fabric.buyStep());
    BiasComb ends = BiasComb.of(this, usable - setting.endsBand(), 0);
    BiasComb corners = BiasComb.of(this, usable - setting.cornersBand(), setting.cornerCount());
    BesidePieces near = corners.nearPieces(this, setting.cornerCount());
    BesidePieces far = corners.farPieces(this, setting.cornerCount());
    BiasComb line = BiasComb.ofLine(this, usable - setting.lineBand());
    PastPieces past = line.pastPieces(this);
    double over = Math.max(Math.max(ends.over(), corners.over()), line.over());
    boolean enough = Rounding.settle(over) >= 0;
    return new BiasTrial(
        steps, usable, ends, corners, line, near, far, past, enough ? tooSmall : steps);
  }

  List<CornerStrips> cornerStrips(BiasTrial trial) {
    PairedStrips pairs = PairedStrips.of(trial, setting, lineStep());
    return IntStream.rangeClosed(1, CornerStrips.MOST)
        .mapToObj(n -> strips(trial, pairs, n))
        .toList();
  }

  private CornerStrips strips(BiasTrial trial, PairedStrips pairs, int number) {
    BiasComb comb = trial.better();
    int discs = trial.cornerDiscs(setting);
    int farCount = Math.min(comb.farShort(), comb.laneCount() - comb.nearShort());
    double near = corner(comb, comb.near(), comb.nearShort(), number);
    double far = corner(comb, comb.far(), farCount, number);
    double longer = pairs.longer();
    PastDisc strip = past.get(number - 1);
    boolean passes = number <= trial.lineStrips(setting);
    double room = trial.line().room(setting);
    double nearSlack = comb.nearSlack(this, discs);
    double farSlack = comb.farSlack(this, discs);
    return new CornerStrips(
        number,
        passes ? strip.crosswise(comb.shorter(), room) : 0,
        pairs.hasNear(number) ? near + longer : 0,
        pairs.hasFar(number) ? far + longer : 0,
        pairs.hasNear(number) ? 0 : near,
        pairs.hasFar(number) ? 0 : far,
        piece(discs >= 1, number, true, comb.shorter(), nearSlack),
        piece(discs >= 1, number, false, comb.shorter(), nearSlack),
        piece(discs >= 2, number, true, comb.shorter(), farSlack),
        piece(discs >= 2, number, false, comb.shorter(), farSlack),
        passes ? pastPiece(strip, comb.shorter(), room, least()) : 0);
  }

  private double corner(BiasComb comb, double first, int count, int number) {
    return number <= count ? comb.strip(first + (number - 1) * lineStep(), lineStep()) : 0;
  }

  private double piece(boolean disc, int number, boolean right, double shorter, double slack) {
    if (!disc || number > beside.size()) {
      return 0;
    }
    BesideDisc strip = beside.get(number - 1);
    return strip.piece(right ? strip.besideRight() : strip.besideLeft(), least(), shorter, slack);
  }
}
