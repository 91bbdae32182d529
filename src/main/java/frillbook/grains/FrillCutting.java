package frillbook.grains;

import frillbook.bias.BiasCutting;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.straight.StraightCutting;
import frillbook.strip.Join;

/** One fabric and its pieces, ready to be laid out in each grain. */
public record FrillCutting(
    StraightCutting crosswise, StraightCutting lengthwise, BiasCutting bias) {

  /**
   * {@code pieces} on {@code fabric}, joined by the habits of {@code brief}.
   *
   * @param biasWidth cut width of bias strips, which may be cut wider than straight ones
   */
  public static FrillCutting of(
      Brief brief, double seamLoss, Fabric fabric, Pieces pieces, double biasWidth) {
    Pieces biasPieces = pieces.withStripWidth(biasWidth);
    Join crosswise = join(Grain.CROSSWISE, brief, seamLoss, pieces);
    Join lengthwise = join(Grain.LENGTHWISE, brief, seamLoss, pieces);
    Join bias = join(Grain.BIAS, brief, seamLoss, biasPieces);
    return new FrillCutting(
        StraightCutting.of(Grain.CROSSWISE, fabric, pieces, crosswise),
        StraightCutting.of(Grain.LENGTHWISE, fabric, pieces, lengthwise),
        BiasCutting.of(fabric, biasPieces, bias));
  }

  private static Join join(Grain grain, Brief brief, double seamLoss, Pieces pieces) {
    return Join.of(
        grain,
        brief.joins().joinLine(),
        seamLoss,
        pieces.stripWidth(),
        brief.fabric().biasStretch());
  }

  public Join join(Grain grain) {
    return switch (grain) {
      case CROSSWISE -> crosswise.join();
      case LENGTHWISE -> lengthwise.join();
      case BIAS -> bias.join();
    };
  }

  private Pieces pieces(Grain grain) {
    return switch (grain) {
      case CROSSWISE -> crosswise.pieces();
      case LENGTHWISE -> lengthwise.pieces();
      case BIAS -> bias.pieces();
    };
  }

  /**
   * Area of run and discs over the usable width: less fabric than this cannot do. Bias strips that
   * stretch are cut shorter and wider; their area is no less.
   */
  public double leastLength() {
    return crosswise.pieces().area(1) / crosswise.fabric().usableWidth();
  }

  /**
   * Area of what is cut in {@code grain} over the usable width, after washing: a length that no
   * plan in that grain can do without. Bias strips that stretch are cut shorter than they join, and
   * wider.
   */
  public double usedLength(Grain grain) {
    return pieces(grain).area(join(grain).gain()) / bias.fabric().usableWidth();
  }

  /**
   * So far does a search reach that the longest length tried is enough in any grain: ten times the
   * least length, and room for strips and discs that lie badly on a short fabric.
   */
  public SearchReach reach(GrainStarts starts) {
    Fabric fabric = bias.fabric();
    double wider = bias.pieces().stripWidth() / crosswise.pieces().stripWidth();
    double longest =
        10 * leastLength() * wider + 2 * fabric.usableWidth() + 2 * starts.longestUseful();
    return SearchReach.of((longest + fabric.squaring()) / fabric.usableShare() / fabric.buyStep());
  }

  public GrainStarts starts() {
    return GrainStarts.of(start(Grain.CROSSWISE), start(Grain.LENGTHWISE), start(Grain.BIAS));
  }

  /** What the strips of the run must add up to in {@code grain}, spares left out. */
  public double need(Grain grain) {
    return pieces(grain).netOfRun(join(grain));
  }

  private GrainStart start(Grain grain) {
    return GrainStart.of(grain, bias.fabric(), pieces(grain), join(grain));
  }
}
