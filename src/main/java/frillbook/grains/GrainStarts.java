package frillbook.grains;

import frillbook.brief.Grain;
import frillbook.naming.Prefixed;

/** Every grain before any length is tried. */
public record GrainStarts(
    @Prefixed("across") GrainStart across,
    @Prefixed("along") GrainStart along,
    @Prefixed("bias") GrainStart bias) {

  /** The largest of the three shortest useful strips. */
  double longestShortestUseful() {
    return Math.max(
        across.shortestUseful(), Math.max(along.shortestUseful(), bias.shortestUseful()));
  }

  public GrainStart of(Grain grain) {
    return switch (grain) {
      case ACROSS -> across;
      case ALONG -> along;
      case BIAS -> bias;
    };
  }
}
