package frillbook.grains;

import frillbook.brief.Grain;
import frillbook.naming.Prefixed;

/**
 * Every grain before any length is tried.
 *
 * @param longestUseful the largest of the three shortest useful strips
 */
public record GrainStarts(
    @Prefixed("across") GrainStart across,
    @Prefixed("along") GrainStart along,
    @Prefixed("bias") GrainStart bias,
    double longestUseful) {

  static GrainStarts of(GrainStart across, GrainStart along, GrainStart bias) {
    double straight = Math.max(across.shortestUseful(), along.shortestUseful());
    return new GrainStarts(across, along, bias, Math.max(straight, bias.shortestUseful()));
  }

  public GrainStart of(Grain grain) {
    return switch (grain) {
      case ACROSS -> across;
      case ALONG -> along;
      case BIAS -> bias;
    };
  }
}
