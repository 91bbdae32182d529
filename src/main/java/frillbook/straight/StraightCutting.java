package frillbook.straight;

import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.Fabric;
import frillbook.cutting.Halving;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/**
 * Straight strips and discs on one fabric, across it or along it.
 *
 * @param own lengthwise strips of one cushion, where each has its own
 */
public record StraightCutting(
    Grain grain, Fabric fabric, Pieces pieces, Join join, List<Lane> beside, OwnStrips own) {

  /** Strips of {@code grain}, across the fabric or along it. */
  public static StraightCutting of(Grain grain, Fabric fabric, Pieces pieces, Join join) {
    List<Lane> beside = Lane.beside(pieces, fabric.usableWidth());
    return new StraightCutting(
        grain, fabric, pieces, join, beside, OwnStrips.of(fabric, pieces, join));
  }

  /** Every length tried, in order. */
  public List<StraightTrial> trials(SearchReach reach) {
    return Halving.search(reach, this::attempt);
  }

  /** Whether {@code steps} buy steps are enough, where {@code tooSmall} are known not to be. */
  public StraightTrial attempt(int steps, int tooSmall) {
    double usable = fabric.usable(steps * fabric.buyStep());
    Sheet sheet = sheet(usable);
    int most = mostInALine(sheet);
    Spread spread = spread(sheet, most);
    double strip = stripLength(sheet);
    boolean divided = Lanes.isDivided(sheet, strip);
    Comb abreast = Comb.of(this, sheet, spread, most);
    Comb stacked = Comb.of(this, sheet, Spread.LINES, fewestInALine(sheet));
    boolean enough = Rounding.settle(Math.max(abreast.over(), stacked.over())) >= 0;
    return new StraightTrial(
        steps,
        sheet.run(),
        sheet.stack(),
        strip,
        divided ? 0 : spread.rims(),
        spread == Spread.ZIGZAG,
        abreast,
        stacked,
        enough ? tooSmall : steps);
  }

  /** The fabric as the strips see it when {@code usable} of its length is left. */
  public Sheet sheet(double usable) {
    return grain == Grain.LENGTHWISE
        ? new Sheet(usable, fabric.usableWidth())
        : new Sheet(fabric.usableWidth(), usable);
  }

  /** Length of a full strip: several lengthwise ones may lie end to end. */
  double stripLength(Sheet sheet) {
    if (grain != Grain.LENGTHWISE) {
      return sheet.run();
    }
    return pieces.ownStrips() ? own.alike() : sheet.run() / endToEnd(sheet.run());
  }

  /** None longer than the longest that is cut, unless it would be too short to join. */
  private int endToEnd(double run) {
    int most = Rounding.down(run / pieces.least(join));
    return Math.max(1, Math.min(most, Rounding.up(run / pieces.longestStrip())));
  }

  /** The strips of one cushion, where each has its own. */
  public CushionStrips cushion() {
    return grain == Grain.LENGTHWISE
        ? own.cushion(pieces, join)
        : CushionStrips.of(pieces, join, fabric.usableWidth());
  }

  /** Two discs lie at either end of the strips, and lengthwise in zigzag if not side by side. */
  private Spread spread(Sheet sheet, int mostInALine) {
    if (pieces.discCount() != 2 || Lanes.isDivided(sheet, stripLength(sheet))) {
      return Spread.LINES;
    }
    if (mostInALine == 2) {
      return Spread.APART;
    }
    return grain == Grain.LENGTHWISE ? Spread.ZIGZAG : Spread.LINES;
  }

  private int mostInALine(Sheet sheet) {
    int fit = Rounding.down(sheet.run() / pieces.discDiameter());
    return Math.max(1, Math.min(pieces.discCount(), fit));
  }

  private int fewestInALine(Sheet sheet) {
    int lines = Math.max(1, Rounding.down(sheet.stack() / pieces.discDiameter()));
    return Math.max(1, Rounding.up((double) pieces.discCount() / lines));
  }

  Lanes lanes(StraightTrial trial) {
    Comb comb = trial.better();
    return new Lanes(
        new Sheet(trial.run(), trial.stack()),
        pieces,
        join,
        trial.spread(),
        cushion(),
        trial.strip(),
        comb.perLine(),
        comb.lines(),
        comb.full());
  }

  /** The strip of every lane. */
  List<LaneStrip> strips(StraightTrial trial) {
    Lanes lanes = lanes(trial);
    return beside.stream().map(lane -> lanes.strip(lane, beside)).toList();
  }
}
