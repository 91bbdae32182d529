package frillbook.picture;

import frillbook.brief.Brief;
import java.util.List;
import java.util.stream.IntStream;

/**
 * About how cloth and price of the order move with the look, as shares of the plan: what grows with
 * the strip or with the rows is scaled, the rest stays. An estimate: no new layout is sought.
 *
 * @param discShare share of the cloth in use that is overlays
 * @param stripCost what grows with the flat length beside cloth: wages and thread
 * @param rowCost what grows with the rows alone: wages
 * @param more how much more half a time fuller, and rings a fifth closer
 */
public record Leanings(
    double discShare,
    double stripCost,
    double rowCost,
    More more,
    List<Fuller> fullers,
    List<Closer> closers) {
  private static final int POINTS = 7;

  /** Another fullness; 1 is the plan's cloth and price. */
  public record Fuller(
      double fullerFullness, double fullerFlat, double fullerCloth, double fullerPrice) {}

  /** Another ring spacing; 1 is the plan's cloth and price. */
  public record Closer(
      double closerSpacing, double closerFlat, double closerCloth, double closerPrice) {}

  /** As shares of the plan, 0 for no more than it. */
  public record More(
      double fullerMoreCloth,
      double fullerMorePrice,
      double closerMoreCloth,
      double closerMorePrice) {
    private static final int HALF_A_TIME_FULLER = 5;
    private static final int A_FIFTH_CLOSER = 1;

    static More of(List<Fuller> fullers, List<Closer> closers) {
      Fuller fuller = fullers.get(HALF_A_TIME_FULLER);
      Closer closer = closers.get(A_FIFTH_CLOSER);
      return new More(
          fuller.fullerCloth() - 1,
          fuller.fullerPrice() - 1,
          closer.closerCloth() - 1,
          closer.closerPrice() - 1);
    }
  }

  /**
   * What the estimate starts from.
   *
   * @param discCloth overlays as a length of the usable width
   * @param usedCloth overlays and strips likewise
   * @param clothCost charged for frill cloth
   */
  public record Base(
      double stitchedLength,
      double flatLength,
      double discCloth,
      double usedCloth,
      double clothCost,
      double stripCost,
      double rowCost,
      double costTotal) {}

  static Leanings of(Brief brief, Base base) {
    var scaled = new Scaled(brief, base, base.discCloth() / base.usedCloth());
    List<Fuller> fullers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::fuller).toList();
    List<Closer> closers = IntStream.rangeClosed(1, POINTS).mapToObj(scaled::closer).toList();
    return new Leanings(
        scaled.discShare(),
        base.stripCost(),
        base.rowCost(),
        More.of(fullers, closers),
        fullers,
        closers);
  }

  private record Scaled(Brief brief, Base base, double discShare) {
    Fuller fuller(int point) {
      double fullness = Math.max(1, brief.frill().fullness() + (point - 4) / 4.0);
      double flat = base.stitchedLength() * fullness + brief.frill().endAllowance();
      return new Fuller(fullness, flat, cloth(flat), price(flat, 1));
    }

    Closer closer(int point) {
      double planned = brief.cushion().ringSpacing();
      double spacing = planned * (1 + (point - 4) / 10.0);
      double end = brief.frill().endAllowance();
      double flat = (base.flatLength() - end) * planned / spacing + end;
      return new Closer(spacing, flat, cloth(flat), price(flat, planned / spacing));
    }

    private double cloth(double flat) {
      return discShare + (1 - discShare) * flat / base.flatLength();
    }

    /** {@code rows} is the sewn length over the planned one. */
    private double price(double flat, double rows) {
      double more =
          (cloth(flat) - 1) * base.clothCost()
              + (flat / base.flatLength() - 1) * base.stripCost()
              + (rows - 1) * base.rowCost();
      double overhead = 1 + brief.money().overheadRate();
      return base.costTotal() > 0 ? 1 + overhead * more / base.costTotal() : 1;
    }
  }
}
