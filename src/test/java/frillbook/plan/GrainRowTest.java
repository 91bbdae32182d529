package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;

class GrainRowTest {
  private static List<GrainRow> rows(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().orElseThrow().grains();
  }

  private static GrainRow.Figures figures(Briefs briefs, Grain grain) {
    return rows(briefs).get(grain.ordinal()).figures().orElseThrow();
  }

  @Test
  void allThreeGrainsStandSideBySide() {
    assertEquals(
        List.of(Grain.values()), rows(Briefs.inch()).stream().map(GrainRow::grainName).toList());
  }

  /** As {@link WorkedOrders#ringsAcross} has it: 12 strips of 44 in from 27 in. */
  @Test
  void stripsAcrossReachFromSelvageToSelvage() {
    var expected = new GrainRow.Figures(12, 11, 27, 1);
    assertEquals(expected, figures(WorkedOrders.ringsAcross(), Grain.CROSSWISE));
  }

  /**
   * By hand: 19 strips of 2 1/4 in lie side by side on 44 in. 22 1/2 in give 19 × 22 = 418 in, 27
   * in give 26 1/2 a strip; the run of 485.238898 takes all 19 of those, and 18 joins.
   */
  @Test
  void stripsAlongAreAsLongAsTheFabricBought() {
    var expected = new GrainRow.Figures(19, 18, 27, 1);
    assertEquals(expected, figures(WorkedOrders.ringsAcross(), Grain.LENGTHWISE));
  }

  /** As {@link WorkedOrders#washedBias} has it, a spare strip among them. */
  @Test
  void biasStripsAreCountedWithTheirSpares() {
    var expected = new GrainRow.Figures(23, 21, 300, 1);
    assertEquals(expected, figures(WorkedOrders.washedBias(), Grain.BIAS));
  }

  /**
   * By hand, the same sold by half metres. Area asks for 209.320741, so 250 at least. They leave
   * 225 − 88 = 137 by 144: strips of 20, 30 … 190 from the near corner, of 27.395, 37.395 … 187.395
   * from the far one, 3715.7 in all, × 1.05 less 35 seams 3753: too little. 300, as before, are
   * enough.
   */
  @Test
  void whatIsBoughtIsComparedWithTheLeastThatIsPossible() {
    Briefs byHalves = WorkedOrders.washedBias().with("buy_step", 50);
    assertEquals(300, figures(byHalves, Grain.BIAS).grainBuy());
    assertEquals(1.2, figures(byHalves, Grain.BIAS).grainRatio(), 1e-12);
  }

  /** By hand: √2 × 11 − 2 × 2 1/4 = 11.06 in on the bias, less than a strip worth joining. */
  @Test
  void fabricTooNarrowForOneGrainSaysSo() {
    Briefs narrow =
        Briefs.inch().with("fabric_width", 12).with("matching_discs", 0).with(Grain.LENGTHWISE);
    GrainRow bias = rows(narrow).get(2);
    assertEquals(GrainRow.Fits.TOO_NARROW, bias.grainFits());
    assertTrue(bias.figures().isEmpty());
    assertEquals(GrainRow.Fits.FITS, rows(narrow).get(1).grainFits());
  }
}
