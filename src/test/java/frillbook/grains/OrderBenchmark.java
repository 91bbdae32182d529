package frillbook.grains;

import frillbook.Briefs;
import frillbook.brief.Grain;
import frillbook.brief.JoinedBy;
import frillbook.plan.ChosenGrain;
import frillbook.plan.GrainsCompared;
import frillbook.plan.Plan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What orders of several cushions take, joined for each cushion and for the whole order without a
 * margin: means over those briefs of the {@link CuttingBenchmark} that have a plan.
 *
 * <p>Joins and hours are those of the order, at the rates that the templates have; what is to spare
 * is that of one joined strip. Strips of any length are cut but in the rows that say at most what.
 */
final class OrderBenchmark {
  private static final String ROW = "%-26s %8s %6s %7s %7s %6s %8s%n";

  /** So long that no strip is divided. */
  private static final int ANY = 2000;

  private OrderBenchmark() {}

  /** Prints a table for {@code quantity} cushions each of {@code grid}. */
  static void print(List<Briefs> grid, int quantity) {
    System.out.printf(
        "%n" + ROW,
        quantity + " cushions",
        "joined",
        "briefs",
        "ratio",
        "joins",
        "hours",
        "to spare");
    for (Grain grain : Grain.values()) {
      print(grain.code(), grid(grid, quantity, grain, ANY));
    }
    print("lengthwise, at most 108", grid(grid, quantity, Grain.LENGTHWISE, 108));
  }

  private static List<Briefs> grid(List<Briefs> grid, int quantity, Grain grain, int longest) {
    return grid.stream()
        .map(brief -> brief.with(grain).with("quantity", quantity).with("longest_strip", longest))
        .toList();
  }

  private static void print(String label, List<Briefs> briefs) {
    for (JoinedBy way : JoinedBy.values()) {
      print(label, way, briefs.stream().flatMap(brief -> plan(brief, way).stream()).toList());
    }
  }

  private static void print(String label, JoinedBy way, List<ChosenGrain> plans) {
    System.out.printf(
        ROW,
        label,
        way.code(),
        plans.size(),
        mean("%.4f", plans, plan -> plan.total().fabricRatio()),
        mean("%.1f", plans, plan -> plan.total().joinCount()),
        mean("%.2f", plans, plan -> plan.costing().hours().hoursTotal()),
        mean("%.1f", plans, plan -> plan.total().joinedSlack()));
  }

  private static String mean(
      String format, List<ChosenGrain> plans, ToDoubleFunction<ChosenGrain> figure) {
    double mean = plans.stream().mapToDouble(figure).average().orElseThrow();
    return String.format(Locale.ROOT, format, mean);
  }

  private static Optional<ChosenGrain> plan(Briefs brief, JoinedBy way) {
    return Plan.of(brief.with("joined_by", way.code()).brief())
        .cutting()
        .flatMap(GrainsCompared::cut);
  }
}
