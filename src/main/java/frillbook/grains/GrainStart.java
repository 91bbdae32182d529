package frillbook.grains;

import frillbook.brief.Grain;
import frillbook.cutting.Cloth;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;

/**
 * What is known of one grain before any length is tried.
 *
 * @param joinTakeup length lost at every join
 * @param shortestUseful the shortest strip that is cut
 * @param can whether the cloth is wide enough for strips and discs this way
 */
public record GrainStart(double joinTakeup, double shortestUseful, boolean can) {

  static GrainStart of(Grain grain, Cloth cloth, Pieces pieces, Join join) {
    double least = join.shortestUseful(pieces.shortestPiece());
    boolean discsFit =
        pieces.discCount() == 0
            || Rounding.settle(cloth.usableWidth() - pieces.discDiameter()) >= 0;
    boolean can = discsFit && Rounding.settle(room(grain, cloth, pieces, least)) >= 0;
    return new GrainStart(join.takeup(), least, can);
  }

  /** What is left when the shortest useful strip lies on the cloth in this direction. */
  private static double room(Grain grain, Cloth cloth, Pieces pieces, double least) {
    double width = cloth.usableWidth();
    return switch (grain) {
      case ACROSS -> width - least;
      case ALONG -> width - pieces.stripWidth();
      case BIAS -> Math.sqrt(2) * width - 2 * pieces.stripWidth() - least;
    };
  }
}
