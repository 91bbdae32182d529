package frillbook.grains;

import frillbook.Briefs;
import frillbook.brief.BackStyle;
import frillbook.brief.BaseSpec;
import frillbook.brief.Brief;
import frillbook.brief.ClothSpec;
import frillbook.brief.CushionSpec;
import frillbook.brief.EdgeFinish;
import frillbook.brief.FrillSpec;
import frillbook.brief.Grain;
import frillbook.brief.JoinFinish;
import frillbook.brief.JoinLine;
import frillbook.brief.JoinSpec;
import frillbook.brief.RowStyle;
import frillbook.measure.LengthUnit;
import frillbook.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How much more cloth than the lower bound the cutting plans buy, over 3024 cushions in inches.
 *
 * <p>Diameters 10 to 24, ring spacings 1/2 to 1, fullness 2 to 3, cloth 44 to 60, frills 1 1/2 to 3
 * high with 1/4 inset and a raw edge, 0 to 2 overlays, French joins of 1/4 and 3/8, cloth sold by
 * the eighth of a yard, no strip under 12 joined, nothing lost at the selvages. Bias strips are
 * joined along the grain, straight ones squarely; a last line shows bias strips joined squarely.
 */
public final class CuttingBenchmark {
  private static final Brief USUAL = Briefs.inch().with("interfaced", "none").brief();

  private CuttingBenchmark() {}

  public static void main(String[] args) {
    System.out.printf("%-28s %6s %7s %7s %7s%n", "grain", "briefs", "mean", "median", "worst");
    for (Grain grain : Grain.values()) {
      print(grain.code(), ratios(grain, JoinLine.BY_GRAIN));
    }
    print("bias, square joins", ratios(Grain.BIAS, JoinLine.SQUARE));
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
    return Plan.of(brief).cutting().orElseThrow().cut().orElseThrow().total().clothRatio();
  }

  /** The 3024 briefs. */
  static List<Brief> grid(Grain grain, JoinLine line) {
    List<Brief> briefs = new ArrayList<>();
    for (double diameter : new double[] {10, 12, 14, 16, 18, 20, 24}) {
      for (double spacing : new double[] {.5, .75, 1}) {
        for (double fullness : new double[] {2, 2.5, 3}) {
          CushionSpec cushion = new CushionSpec(diameter, spacing, RowStyle.SPIRAL, 0, 0, 0, 1);
          cloths(grain).forEach(cloth -> frills(briefs, cushion, fullness, cloth, line));
        }
      }
    }
    return briefs;
  }

  private static Stream<ClothSpec> cloths(Grain grain) {
    return Stream.of(44, 54, 58, 60)
        .map(width -> new ClothSpec(width, grain, 0, 0, 0, 0, 12, 0, 4.5));
  }

  private static void frills(
      List<Brief> briefs, CushionSpec cushion, double fullness, ClothSpec cloth, JoinLine line) {
    for (double height : new double[] {1.5, 2, 2.5, 3}) {
      for (int overlays = 0; overlays <= 2; overlays++) {
        briefs.add(
            new Brief(
                LengthUnit.INCH,
                cushion,
                new FrillSpec(fullness, height, .25, EdgeFinish.RAW, 0, 0, 0),
                cloth,
                new JoinSpec(JoinFinish.FRENCH, .25, .375, line),
                new BaseSpec(.5, .04, overlays, 0, 60, BackStyle.ONE_DISC, 0, 0, 0),
                .125,
                USUAL.materials(),
                USUAL.fill(),
                USUAL.thread(),
                USUAL.times(),
                USUAL.money(),
                USUAL.choices(),
                USUAL.words()));
      }
    }
  }
}
