package frillbook.picture;

import frillbook.brief.Brief;
import java.util.List;
import java.util.stream.IntStream;

/**
 * About how the fabric of the order moves with the look, as shares of the plan: what grows with the
 * strip is scaled, the rest stays. An estimate: no new layout is sought.
 *
 * @param discShare share of the fabric in use that is matching discs
 * @param fullerMoreFabric how much more half a time fuller; 0 for no more than the plan
 * @param closerMoreFabric how much more with rings a fifth closer
 */
public record Leanings(
    double discShare,
    double fullerMoreFabric,
    double closerMoreFabric,
    List<Fuller> fullers,
    List<Closer> closers) {
  static final int HALF_A_TIME_FULLER = 5;
  static final int A_FIFTH_CLOSER = 1;

  private static final int POINTS = 7;

  /** Another fullness; 1 is the plan's fabric. */
  public record Fuller(double fullerFullness, double fullerFlat, double fullerFabric) {}

  /** Another ring spacing; 1 is the plan's fabric. */
  public record Closer(double closerSpacing, double closerFlat, double closerFabric) {}

  /**
   * What the estimate starts from.
   *
   * @param discFabric matching discs as a length of the usable width
   * @param usedFabric matching discs and strips likewise
   */
  public record Base(
      double stitchedLength, double flatLength, double discFabric, double usedFabric) {}

  public static Leanings of(Brief brief, Base base) {
    var scaled = new Scaled(brief, base, base.discFabric() / base.usedFabric());
    List<Fuller> fullers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::fuller).toList();
    List<Closer> closers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::closer).toList();
    return new Leanings(
        scaled.discShare(),
        fullers.get(HALF_A_TIME_FULLER).fullerFabric() - 1,
        closers.get(A_FIFTH_CLOSER).closerFabric() - 1,
        fullers,
        closers);
  }

  private record Scaled(Brief brief, Base base, double discShare) {
    Fuller fuller(int point) {
      double fullness = Math.max(1, brief.frill().fullness() + (point - 4) / 4.0);
      double flat = base.stitchedLength() * fullness + brief.frill().endAllowance();
      return new Fuller(fullness, flat, fabric(flat));
    }

    Closer closer(int point) {
      double planned = brief.cushion().ringSpacing();
      double spacing = planned * (1 + (point - 4) / 10.0);
      double end = brief.frill().endAllowance();
      double flat = (base.flatLength() - end) * planned / spacing + end;
      return new Closer(spacing, flat, fabric(flat));
    }

    private double fabric(double flat) {
      return discShare + (1 - discShare) * flat / base.flatLength();
    }
  }
}
