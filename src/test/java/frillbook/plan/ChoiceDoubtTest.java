package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Choices two and three as differences from a cushion two and a half times full with rings 3/4 in
 * apart, half a time flatter and fuller unless a test says otherwise.
 */
class ChoiceDoubtTest {
  private static Costing costing(Briefs briefs) {
    return WorkedOrders.work(briefs).costing();
  }

  private static ChoiceRow.Look look(Briefs briefs, int number) {
    return costing(briefs).choices().get(number - 1).look().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"2.5, 2, 3", "3, 2.5, 3.5", "1.75, 1.25, 2.25"})
  void bothFollowTheFullnessOfTheBrief(double fullness, double two, double three) {
    Briefs briefs = Briefs.inch().with("fullness", fullness);
    assertEquals(two, look(briefs, 2).choiceFullness());
    assertEquals(three, look(briefs, 3).choiceFullness());
  }

  @Test
  void theSpacingIsThatOfTheBriefUnlessItIsSet() {
    Briefs briefs = Briefs.inch().with("ring_spacing", 1).with("choice_three_spacing", .5);
    assertEquals(1, look(briefs, 2).choiceSpacing());
    assertEquals(.5, look(briefs, 3).choiceSpacing());
  }

  @Test
  void halfATimeFlatterAndFullerAreInNoDoubt() {
    assertEquals(0, costing(Briefs.inch()).twoDoubt());
    assertEquals(0, costing(Briefs.inch()).threeDoubt());
  }

  /** By hand: 1.4 less 0.5 is 0.9, a strip shorter than the line it is sewn to. */
  @Test
  void whatIsLessThanOnceFullCannotBeMade() {
    Costing costing = costing(Briefs.inch().with("fullness", 1.4));
    assertEquals(1, costing.twoDoubt());
    assertEquals(ChoiceRow.Fits.FAILS, costing.choices().get(1).choiceFits());
  }

  /** The raw edge lies 1/4 in inside its row: rings as far apart would lie on it. */
  @ParameterizedTest
  @CsvSource({"0.25, 1, FAILS", "0.2, 1, FAILS", "0.375, 0, FITS"})
  void ringsOnTheRawEdgesBeforeThemCannotBeMade(double spacing, int doubt, ChoiceRow.Fits fits) {
    Costing costing = costing(Briefs.inch().with("choice_three_spacing", spacing));
    assertEquals(doubt, costing.threeDoubt());
    assertEquals(fits, costing.choices().get(2).choiceFits());
  }

  @Test
  void onceFullCanBeMade() {
    Costing costing = costing(Briefs.inch().with("fullness", 1.5));
    assertEquals(0, costing.twoDoubt());
    assertEquals(ChoiceRow.Fits.FITS, costing.choices().get(1).choiceFits());
  }

  @ParameterizedTest
  @CsvSource({
    "-0.5, a flatter one, 0",
    "0, a flatter one, 2",
    "0.5, Flatter, 2",
    "0.5, much fuller, 0",
    "0, Fuller, 2",
    "-0.5, fuller, 2",
    "-0.5, for the bench, 0"
  })
  void wordsThatSayTheContraryAreDoubted(double more, String words, int doubt) {
    Briefs briefs = Briefs.inch().with("choice_two_more", more).with("choice_two_words", words);
    assertEquals(doubt, costing(briefs).twoDoubt());
  }

  /**
   * By the area rule: rings 1/2 in apart are half as long again as those 3/4 in apart, so a frill
   * 2.25 times full takes 1.35 times the strip, and all that goes with it.
   */
  @Test
  void whatIsFlatterAndYetDearerIsDoubted() {
    Briefs briefs = Briefs.inch().with("choice_two_more", -.25).with("choice_two_spacing", .5);
    assertEquals(3, costing(briefs).twoDoubt());
  }

  /** By the area rule: rings twice as far apart are half as long; 3 times full takes 0.6. */
  @Test
  void whatIsFullerAndYetCheaperIsDoubted() {
    assertEquals(3, costing(Briefs.inch().with("choice_three_spacing", 1.5)).threeDoubt());
  }
}
