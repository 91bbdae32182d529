package frillbook.grains;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Filled;
import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.GrainPlan;
import frillbook.offcut.Tables;
import frillbook.straight.StraightPlan;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Full strips of 50, and shorter ones of 41, 40 and 31. */
class GrainPlansTest {
  private static final CushionStrips ACROSS = CushionStrips.alike(2, 50);

  private static final CushionStrips ALONG = CushionStrips.alike(3, 40);

  private static GrainPlan plan(int odd) {
    return Filled.of(
        StraightPlan.class,
        Map.of("length", Tables.length(60), "cut", Tables.cut(4, odd), "stripLength", 50.0));
  }

  private static GrainPlans layouts() {
    Map<String, Object> values =
        Map.of(
            "odds",
            Tables.odds(41, 40, 31),
            "crosswiseCushion",
            ACROSS,
            "lengthwiseCushion",
            ALONG);
    return Tables.laid(Grain.CROSSWISE, 50, 0, plan(0), values, 0).layouts();
  }

  @Test
  void everyGrainHasTheStripsOfItsCushion() {
    assertEquals(ACROSS, layouts().cushion(Grain.CROSSWISE));
    assertEquals(ALONG, layouts().cushion(Grain.LENGTHWISE));
  }

  @Test
  void theShortestStripIsTheLastThatIsCut() {
    assertEquals(50, layouts().shortestStrip(plan(0)));
    assertEquals(41, layouts().shortestStrip(plan(1)));
    assertEquals(31, layouts().shortestStrip(plan(3)));
  }
}
