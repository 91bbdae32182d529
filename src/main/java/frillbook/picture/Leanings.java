package frillbook.picture;

import frillbook.brief.Brief;
import java.util.List;
import java.util.stream.IntStream;

/**
 * About how the cloth of the order moves with the look, as shares of the plan: what grows with the
 * strip is scaled, the rest stays. An estimate: no new layout is sought.
 *
 * @param discShare share of the cloth in use that is overlays
 * @param fullerMoreCloth how much more half a time fuller; 0 for no more than the plan
 * @param closerMoreCloth how much more with rings a fifth closer
 */
public record Leanings(
    double discShare,
    double fullerMoreCloth,
    double closerMoreCloth,
    List<Fuller> fullers,
    List<Closer> closers) {
  static final int HALF_A_TIME_FULLER = 5;
  static final int A_FIFTH_CLOSER = 1;

  private static final int POINTS = 7;

  /** Another fullness; 1 is the plan's cloth. */
  public record Fuller(double fullerFullness, double fullerFlat, double fullerCloth) {}

  /** Another ring spacing; 1 is the plan's cloth. */
  public record Closer(double closerSpacing, double closerFlat, double closerCloth) {}

  /**
   * What the estimate starts from.
   *
   * @param discCloth overlays as a length of the usable width
   * @param usedCloth overlays and strips likewise
   */
  public record Base(
      double stitchedLength, double flatLength, double discCloth, double usedCloth) {}

  public static Leanings of(Brief brief, Base base) {
    var scaled = new Scaled(brief, base, base.discCloth() / base.usedCloth());
    List<Fuller> fullers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::fuller).toList();
    List<Closer> closers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::closer).toList();
    return new Leanings(
        scaled.discShare(),
        fullers.get(HALF_A_TIME_FULLER).fullerCloth() - 1,
        closers.get(A_FIFTH_CLOSER).closerCloth() - 1,
        fullers,
        closers);
  }

  private record Scaled(Brief brief, Base base, double discShare) {
    Fuller fuller(int point) {
      double fullness = Math.max(1, brief.frill().fullness() + (point - 4) / 4.0);
      double flat = base.stitchedLength() * fullness + brief.frill().endAllowance();
      return new Fuller(fullness, flat, cloth(flat));
    }

    Closer closer(int point) {
      double planned = brief.cushion().ringSpacing();
      double spacing = planned * (1 + (point - 4) / 10.0);
      double end = brief.frill().endAllowance();
      double flat = (base.flatLength() - end) * planned / spacing + end;
      return new Closer(spacing, flat, cloth(flat));
    }

    private double cloth(double flat) {
      return discShare + (1 - discShare) * flat / base.flatLength();
    }
  }
}
