package frillbook.grains;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.brief.JoinLine;
import frillbook.plan.Plan;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How much more fabric than the lower bound the cutting plans buy, over 3024 cushions in inches.
 *
 * <p>Diameters 10 to 24, ring spacings 1/2 to 1, fullness 2 to 3, fabric 44 to 60, frills 1 1/2 to
 * 3 high with 1/4 inset and a raw edge, 0 to 2 matching discs, French joins of 1/4 and 3/8, fabric
 * sold by the eighth of a yard, no strip under 12 joined, nothing lost at the selvages. Bias strips
 * are joined along the grain, straight ones squarely; a last line shows bias strips joined
 * squarely.
 */
public final class CuttingBenchmark {
  private static final Briefs USUAL =
      Briefs.inch()
          .with("interfaced", "none")
          .with("centre_gap", 0)
          .with("edge_clearance", 0)
          .with("ring_lap", 0)
          .with("end_allowance", 0)
          .with("selvage", 0)
          .with("base_fabric_width", 60);

  private CuttingBenchmark() {}

  public static void main(String[] args) {
    System.out.printf("%-28s %6s %7s %7s %7s%n", "grain", "briefs", "mean", "median", "worst");
    for (Grain grain : Grain.values()) {
      print(grain.code(), ratios(grain, JoinLine.BY_GRAIN));
    }
    print("bias, square joins", ratios(Grain.BIAS, JoinLine.SQUARE));
    OrderBenchmark.print(varied(USUAL).toList(), 4);
    OrderBenchmark.print(varied(USUAL).toList(), 12);
  }

  private static void print(String label, double[] ratios) {
    System.out.printf(
        Locale.ROOT,
        "%-28s %6d %7.4f %7.4f %7.4f%n",
        label,
        ratios.length,
        Arrays.stream(ratios).average().orElseThrow(),
        (ratios[(ratios.length - 1) / 2] + ratios[ratios.length / 2]) / 2,
        ratios[ratios.length - 1]);
  }

  private static double[] ratios(Grain grain, JoinLine line) {
    return grid(grain, line).stream().mapToDouble(CuttingBenchmark::ratio).sorted().toArray();
  }

  /** Throws where a brief has no plan: every brief must be feasible. */
  private static double ratio(Brief brief) {
    return Plan.of(brief).cutting().orElseThrow().cut().orElseThrow().total().fabricRatio();
  }

  /** The 3024 briefs. */
  static List<Brief> grid(Grain grain, JoinLine line) {
    Briefs usual = USUAL.with(grain).with("join_line", line.code());
    return varied(usual).map(Briefs::brief).toList();
  }

  private static Stream<Briefs> varied(Briefs usual) {
    return Stream.of(usual)
        .flatMap(brief -> each(brief, "diameter", 10, 12, 14, 16, 18, 20, 24))
        .flatMap(brief -> each(brief, "ring_spacing", .5, .75, 1))
        .flatMap(brief -> each(brief, "fullness", 2, 2.5, 3))
        .flatMap(brief -> each(brief, "fabric_width", 44, 54, 58, 60))
        .flatMap(brief -> each(brief, "frill_height", 1.5, 2, 2.5, 3))
        .flatMap(brief -> each(brief, "matching_discs", 0, 1, 2));
  }

  private static Stream<Briefs> each(Briefs brief, String input, double... values) {
    return Arrays.stream(values).mapToObj(value -> brief.with(input, value));
  }
}
