package frillbook.cutting;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import java.util.List;

/** One cloth and its pieces, ready to be laid out in each grain. */
public record FrillCutting(StraightCutting across, StraightCutting along, BiasCutting bias) {

  /** {@code pieces} on {@code cloth}, joined by the habits of {@code brief}. */
  public static FrillCutting of(Brief brief, double seamLoss, Cloth cloth, Pieces pieces) {
    List<Lane> lanes = Lane.beside(pieces);
    Join bias = join(Grain.BIAS, brief, seamLoss, pieces);
    return new FrillCutting(
        new StraightCutting(
            Grain.ACROSS, cloth, pieces, join(Grain.ACROSS, brief, seamLoss, pieces), lanes),
        new StraightCutting(
            Grain.ALONG, cloth, pieces, join(Grain.ALONG, brief, seamLoss, pieces), lanes),
        new BiasCutting(cloth, pieces, bias, BesideDisc.all(pieces, bias)));
  }

  private static Join join(Grain grain, Brief brief, double seamLoss, Pieces pieces) {
    return Join.of(
        grain,
        brief.joins().joinLine(),
        seamLoss,
        pieces.stripWidth(),
        brief.cloth().biasStretch());
  }

  public Join join(Grain grain) {
    return switch (grain) {
      case ACROSS -> across.join();
      case ALONG -> along.join();
      case BIAS -> bias.join();
    };
  }

  public GrainStarts starts() {
    return new GrainStarts(start(Grain.ACROSS), start(Grain.ALONG), start(Grain.BIAS));
  }

  private GrainStart start(Grain grain) {
    return GrainStart.of(grain, bias.cloth(), bias.pieces(), join(grain));
  }
}
