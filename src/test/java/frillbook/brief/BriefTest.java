package frillbook.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import org.junit.jupiter.api.Test;

class BriefTest {
  private static final Briefs BRIEFS = Briefs.inch();

  @Test
  void theLookIsFullnessAndSpacing() {
    assertEquals(new LookSpec(2.5, .75), BRIEFS.brief().look());
  }

  @Test
  void anotherLookChangesNothingElse() {
    Brief typed = BRIEFS.with("fullness", 2).with("ring_spacing", 1).brief();
    assertEquals(typed, BRIEFS.brief().with(new LookSpec(2, 1)));
  }

  /** 4 1/2 minutes at 15 an hour are 1.125, and so are 3 3/8 in at 12 a yard. */
  @Test
  void aStripIsWorthTheFabricThatItsWagesWouldBuy() {
    assertEquals(3.375, Briefs.inch().brief().stripWorth(), 1e-12);
  }
}
