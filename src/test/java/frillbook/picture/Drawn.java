package frillbook.picture;

import frillbook.Briefs;
import frillbook.Said;
import frillbook.SampleBriefs;
import frillbook.brief.Grain;
import frillbook.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The pictures of a brief.
 *
 * @param briefs with every input, to say which it was
 */
record Drawn(Briefs briefs, Plan plan, PictureSet set) {

  static Optional<Drawn> of(Briefs briefs) {
    Plan plan = Plan.of(briefs.brief());
    return plan.work()
        .flatMap(work -> work.cut())
        .map(cut -> new Drawn(briefs, plan, cut.pictures().set()));
  }

  /** Of {@code count} briefs at random, those that have a plan, in every grain. */
  static List<Drawn> sample(int count, long seed) {
    return SampleBriefs.of(count, seed).stream()
        .flatMap(briefs -> Stream.of(Grain.values()).map(briefs::with))
        .flatMap(briefs -> Drawn.of(briefs).stream())
        .toList();
  }

  /** What the workbook says over the picture {@code name}. */
  String title(String name) {
    return Said.of(briefs, plan).line(name + "_title");
  }

  String what() {
    return briefs.inputs().toString();
  }
}
