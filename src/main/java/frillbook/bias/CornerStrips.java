package frillbook.bias;

import java.util.stream.DoubleStream;

/**
 * The bias strips that are shorter than full, counted outward from both corners; 0 for none.
 *
 * @param cornerNo from 1
 * @param nearLane the strip in the near corner
 * @param farLane the strip in the far corner
 * @param nearRight right-hand piece beside the near disc
 * @param nearLeft left-hand piece beside the near disc
 * @param farRight right-hand piece beside the far disc
 * @param farLeft left-hand piece beside the far disc
 */
public record CornerStrips(
    int cornerNo,
    double nearLane,
    double farLane,
    double nearRight,
    double nearLeft,
    double farRight,
    double farLeft) {

  DoubleStream lengths() {
    return DoubleStream.of(nearLane, farLane, nearRight, nearLeft, farRight, farLeft);
  }
}
