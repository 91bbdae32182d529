package frillbook.grains;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;

/**
 * What is known of one grain before any length is tried.
 *
 * @param joinLoss length lost at every join
 * @param shortestUseful the shortest strip that is cut
 * @param can whether the fabric is wide enough for strips this way
 */
public record GrainStart(double joinLoss, double shortestUseful, boolean can) {

  static GrainStart of(Grain grain, Fabric fabric, Pieces pieces, Join join) {
    double least = join.shortestUseful(pieces.shortestPiece());
    boolean can = Rounding.settle(room(grain, fabric, pieces, least)) >= 0;
    return new GrainStart(join.loss(), least, can);
  }

  /** What is left when the shortest useful strip lies on the fabric in this direction. */
  private static double room(Grain grain, Fabric fabric, Pieces pieces, double least) {
    double width = fabric.usableWidth();
    return switch (grain) {
      case CROSSWISE -> width - least;
      case LENGTHWISE -> width - pieces.stripWidth();
      case BIAS -> Math.sqrt(2) * width - 2 * pieces.stripWidth() - least;
    };
  }
}
