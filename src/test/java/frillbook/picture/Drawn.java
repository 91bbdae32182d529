package frillbook.picture;

import frillbook.Briefs;
import frillbook.Said;
import frillbook.SampleBriefs;
import frillbook.brief.Grain;
import frillbook.plan.ChosenGrain;
import frillbook.plan.GrainsCompared;
import frillbook.plan.Plan;
import frillbook.plan.RowWork;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The pictures of a brief.
 *
 * @param briefs with every input, to say which it was
 */
record Drawn(Briefs briefs, Plan plan) {

  static Optional<Drawn> of(Briefs briefs) {
    Plan plan = Plan.of(briefs.brief());
    boolean whole =
        plan.checks().planOk() && plan.cutting().flatMap(GrainsCompared::cut).isPresent();
    return whole ? Optional.of(new Drawn(briefs, plan)) : Optional.empty();
  }

  /** Of {@code count} briefs at random, those that have a plan, in every grain. */
  static List<Drawn> sample(int count, long seed) {
    return SampleBriefs.of(count, seed).stream()
        .flatMap(briefs -> Stream.of(Grain.values()).map(briefs::with))
        .flatMap(briefs -> Drawn.of(briefs).stream())
        .toList();
  }

  private RowWork rows() {
    return plan.rows().orElseThrow();
  }

  private ChosenGrain cut() {
    return plan.cutting().flatMap(GrainsCompared::cut).orElseThrow();
  }

  Guide guide() {
    return rows().guide();
  }

  /** Joins in the first cushion, of those listed. */
  int guideJoinCount() {
    return cut().guideJoinCount();
  }

  Side side() {
    return plan.side();
  }

  FabricPicture fabric() {
    return cut().picture();
  }

  BasePicture base() {
    return plan.base().picture();
  }

  List<MoneyShare> money() {
    return cut().costing().bill().asking().orElseThrow().money();
  }

  /** Of the order. */
  double price() {
    return cut().costing().bill().asking().orElseThrow().price().priceTotal();
  }

  /** What the workbook says over the picture {@code name}. */
  String title(String name) {
    return Said.of(briefs, plan).line(name + "_title");
  }

  String what() {
    return briefs.inputs().toString();
  }
}
