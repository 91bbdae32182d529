package frillbook.grains;

import frillbook.brief.Grain;
import frillbook.naming.Prefixed;

/**
 * Every grain before any length is tried.
 *
 * @param longestUseful the largest of the three shortest useful strips
 */
public record GrainStarts(
    @Prefixed("crosswise") GrainStart crosswise,
    @Prefixed("lengthwise") GrainStart lengthwise,
    @Prefixed("bias") GrainStart bias,
    double longestUseful) {

  static GrainStarts of(GrainStart crosswise, GrainStart lengthwise, GrainStart bias) {
    double straight = Math.max(crosswise.shortestUseful(), lengthwise.shortestUseful());
    return new GrainStarts(crosswise, lengthwise, bias, Math.max(straight, bias.shortestUseful()));
  }

  public GrainStart of(Grain grain) {
    return switch (grain) {
      case CROSSWISE -> crosswise;
      case LENGTHWISE -> lengthwise;
      case BIAS -> bias;
    };
  }
}
