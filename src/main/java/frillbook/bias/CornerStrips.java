package frillbook.bias;

import java.util.stream.DoubleStream;

/**
 * The bias strips that are shorter than full, counted outward from both corners, and past a line of
 * discs from the first on; 0 for none.
 *
 * @param cornerNo from 1
 * @param pastDepth from the other long edge, of the strip past the line of discs
 * @param nearPair the strip in the near corner, if it is joined to one of the far corner; its
 *     length is the mean of its sides
 * @param farPair the same in the far corner
 * @param nearLane the strip in the near corner, if it is joined to any other; its shorter side
 * @param farLane the same in the far corner
 * @param nearRight right-hand piece beside the near disc
 * @param nearLeft left-hand piece beside the near disc
 * @param farRight right-hand piece beside the far disc
 * @param farLeft left-hand piece beside the far disc
 * @param pastPiece strip past the line of discs
 */
public record CornerStrips(
    int cornerNo,
    double pastDepth,
    double nearPair,
    double farPair,
    double nearLane,
    double farLane,
    double nearRight,
    double nearLeft,
    double farRight,
    double farLeft,
    double pastPiece) {

  /** As many as strips past a line of discs, of which there may be most. */
  static final int MOST = PastDisc.MOST;

  DoubleStream lengths() {
    return DoubleStream.concat(paired(), singles());
  }

  /** Those that are joined to one of the other corner. */
  DoubleStream paired() {
    return DoubleStream.of(nearPair, farPair);
  }

  /** Those that need no partner. */
  DoubleStream singles() {
    return DoubleStream.of(nearLane, farLane, nearRight, nearLeft, farRight, farLeft, pastPiece);
  }
}
