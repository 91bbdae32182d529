package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Grain;
import org.junit.jupiter.api.Test;

/** What a plan wants a second look at. */
class PlanFlagsTest {
  private static final Briefs BRIEFS =
      Briefs.inch().with("edge_finish", "pinked").with("hourly_rate", 15);

  private static Plan plan(Briefs briefs) {
    return Plan.of(briefs.brief());
  }

  /** 49 1/2 in lengthwise, 40 1/2 across: a hundredth cheaper is told, and not the whole price. */
  @Test
  void aGrainThatIsDearerThanAnotherIsTold() {
    Briefs along = BRIEFS.with(Grain.LENGTHWISE);
    assertFalse(plan(along.with("cheaper_share", .01)).grainIsCheap());
    assertTrue(plan(along.with("cheaper_share", .95)).grainIsCheap());
    assertEquals(Plan.Flag.LOOK_AGAIN, plan(along.with("cheaper_share", .01)).checkFlag());
  }

  /** A date typed for a wage. */
  @Test
  void aWageFarFromTheMaterialsIsTold() {
    assertTrue(plan(BRIEFS).priceIsPlausible());
    Plan mistyped = plan(BRIEFS.with("hourly_rate", 45_000).with("far_off", 50));
    assertFalse(mistyped.priceIsPlausible());
    assertEquals(Plan.Flag.LOOK_AGAIN, mistyped.checkFlag());
  }

  /** Half a time flatter than 1.4 is not gathered; of both choices one in doubt is enough. */
  @Test
  void choicesInDoubtAreTold() {
    assertTrue(plan(BRIEFS).choicesAgree());
    assertFalse(plan(BRIEFS.with("fullness", 1.4)).choicesAgree());
    Briefs third = BRIEFS.with("choice_three_spacing", .2);
    assertFalse(plan(third).choicesAgree());
    assertFalse(plan(third.with("fullness", 1.4)).choicesAgree());
  }

  @Test
  void withoutRowsThereIsNoPlan() {
    Plan none = plan(BRIEFS.with("diameter", 6).with("centre_gap", 5));
    assertEquals(Plan.Flag.STOP, none.checkFlag());
    assertTrue(none.lengthFound());
    assertTrue(none.ownStripsAreLean());
  }

  /** The petals of a gathered frill swing to and fro. */
  @Test
  void theFlowerIsAsDeepAsItsFrill() {
    assertNotEquals(0, plan(BRIEFS).flower().petalRings().get(0).petalSwing());
    assertEquals(0, plan(BRIEFS.with("fullness", 1)).flower().petalRings().get(0).petalSwing());
  }
}
