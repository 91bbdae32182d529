package frillbook.layout;

import frillbook.Briefs;
import frillbook.SampleBriefs;
import frillbook.SharedSample;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.plan.CutTotals;
import frillbook.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;

/** A brief in one grain with its plan and layout; polygons in the order of strips and discs. */
record Laid(Brief brief, Plan plan, CutLayout layout, List<Polygon> polygons, String what) {
  private static final int USUAL_BRIEFS = 300;

  /** Fewer only where speed counts for more, as in mutation testing. */
  private static final int BRIEFS = SampleBriefs.layouts(USUAL_BRIEFS);

  private static final long SEED = 20250101;

  /** Larger orders repeat what smaller ones show. */
  private static final int MOST_PIECES = 500;

  private static final SharedSample<List<Laid>> SAMPLE = new SharedSample<>(Laid::draw);

  /** All briefs in inches and every third in centimetres too, in all three grains. */
  static List<Laid> sample() {
    return SAMPLE.get();
  }

  /** {@code count}, or its share where fewer briefs than usual are drawn. */
  static int share(int count) {
    return Math.min(count, count * BRIEFS / USUAL_BRIEFS);
  }

  private static List<Laid> draw() {
    List<Laid> laid = new ArrayList<>();
    List<Briefs> inches = SampleBriefs.of(BRIEFS, SEED);
    for (int i = 0; i < inches.size(); i++) {
      addTo(laid, inches.get(i));
      if (i % 3 == 0) {
        addTo(laid, inches.get(i).inMillimetres());
      }
    }
    wide().limit(Math.max(1, share(12))).forEach(briefs -> addTo(laid, briefs));
    squared().forEach(briefs -> addTo(laid, briefs));
    return List.copyOf(laid);
  }

  /**
   * Large orders of narrow frills on wide fabric. A corner would hold more shorter bias strips than
   * are considered, so the lines begin further in, and the matching disc in the near corner with
   * them.
   */
  private static Stream<Briefs> wide() {
    Briefs narrow = Briefs.inch().with("frill_height", 1).with("fabric_width", 130);
    return Stream.of(14, 18, 24)
        .map(diameter -> narrow.with("diameter", diameter).with("quantity", 400 / diameter))
        .flatMap(b -> Stream.of("by_grain", "square").map(line -> b.with("join_line", line)))
        .flatMap(b -> Stream.of(b, b.inMillimetres()));
  }

  /** Fabric whose ends must be straightened before anything is cut. */
  private static Stream<Briefs> squared() {
    Briefs torn = Briefs.inch().with("squaring_allowance", 3);
    return Stream.of(0, 1, 2)
        .map(discs -> torn.with("matching_discs", discs).with("wash_shrink_length", .02 * discs))
        .flatMap(b -> Stream.of(b, b.inMillimetres()));
  }

  private static void addTo(List<Laid> laid, Briefs briefs) {
    for (Grain grain : Grain.values()) {
      of(briefs, grain).ifPresent(laid::add);
    }
  }

  static Optional<Laid> of(Briefs briefs, Grain grain) {
    Brief brief = briefs.with(grain).brief();
    Plan plan = Plan.of(brief);
    return CutLayout.of(brief, plan, grain)
        .filter(layout -> layout.strips().size() + layout.discs().size() <= MOST_PIECES)
        .map(
            l ->
                new Laid(
                    brief,
                    plan,
                    l,
                    polygons(l),
                    grain + " " + briefs.unit() + " " + briefs.inputs()));
  }

  private static List<Polygon> polygons(CutLayout layout) {
    return Stream.concat(
            layout.strips().stream().map(OnFabric::polygon),
            layout.discs().stream().map(OnFabric::polygon))
        .toList();
  }

  CutTotals cut() {
    return plan.cutting().orElseThrow().cut().orElseThrow().total();
  }

  /** Discs laid on the base fabric that are no backs: what is no rectangle there is a disc. */
  int bases() {
    BaseLayout base = BaseLayout.of(brief);
    int backs = brief.cushion().quantity() * brief.base().backStyle().pieces();
    return base.discs().size() - (backs - base.backs().size());
  }

  /** Matching discs in a line along the long edge; on the bias. */
  int lineDiscs() {
    return isBias() ? plan.cutting().orElseThrow().layouts().bias().orElseThrow().lineDiscs() : 0;
  }

  double stripWidth() {
    return plan.sizes().strip().stripCutWidth();
  }

  boolean isBias() {
    return brief.fabric().grain() == Grain.BIAS;
  }

  /** By how much the strips must be turned to lie along the axes. */
  double angle() {
    return isBias() ? Math.PI / 4 : 0;
  }

  boolean slanting() {
    return isBias() && brief.joins().joinLine().isDiagonal(Grain.BIAS);
  }
}
