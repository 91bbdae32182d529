package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FabricTest {
  private static final Fabric FABRIC = new Fabric(40, .8, 4.5);

  private static final Fabric SQUARED = new Fabric(40, .8, 4.5, 2);

  private static final Join STRAIGHT = new Join(false, 1, 1);

  private static final Join STRETCHING = new Join(false, 1, 1.25);

  /** By hand: 54 less two selvages of 1/2 is 53, of which washing leaves 0.96: 50.88. */
  @Test
  void selvagesAreLostBeforeTheFabricIsWashed() {
    Briefs washed = Briefs.inch().with("wash_shrink_length", .2).with("wash_shrink_width", .04);
    Fabric fabric = Fabric.of(washed.brief().fabric(), 54);
    assertEquals(50.88, fabric.usableWidth(), 1e-12);
    assertEquals(.8, fabric.usableShare(), 1e-12);
    assertEquals(4.5, fabric.buyStep());
  }

  /** By hand: 36 ÷ 0.8 = 45 is ten steps of 4 1/2; a hair more is eleven. */
  @ParameterizedTest
  @CsvSource({"36,45", "36.01,49.5"})
  void fabricIsBoughtForWhatIsLeftOfItAfterWashing(double used, double bought) {
    assertEquals(bought, FABRIC.buyLengthFor(used));
  }

  /** By hand: 45 in washed to 36, less 2 at the ends, are 34; 2 1/2 in would be gone altogether. */
  @ParameterizedTest
  @CsvSource({"45,34", "2.5,0", "1,0"})
  void straighteningTheEndsShortensEveryLengthOnce(double bought, double usable) {
    assertEquals(usable, SQUARED.usable(bought), 1e-12);
  }

  /** By hand: 34 + 2 = 36 in are 45 before washing, ten steps; a hair more is eleven. */
  @ParameterizedTest
  @CsvSource({"34,45", "34.01,49.5"})
  void theStraightenedEndsAreBoughtBesideWhatIsUsed(double used, double bought) {
    assertEquals(bought, SQUARED.buyLengthFor(used));
  }

  /** By hand: 54 in, of which 6 in are lost in width alone by the selvages, not in length. */
  @Test
  void theShopHabitSaysWhatStraighteningTakes() {
    Briefs habit = Briefs.inch().with("selvage", 3).with("squaring_allowance", 1.5);
    assertEquals(52.5, Fabric.of(habit.brief().fabric(), 54).usable(54));
  }

  /** By hand: 2 in × 720 in ÷ 40 in = 36 in, 45 before washing; 2 in more would be eleven steps. */
  @Test
  void theLeastPossibleFabricHasNoEndsToStraighten() {
    assertEquals(45, SQUARED.lowerBound(new Pieces(2, 720, 0, 12, 0, 10, .125), STRAIGHT));
  }

  /**
   * By hand: 900 in of strips 2 in wide stretch from 720, so 1440 in² over 40 are 36 in after
   * washing, ten steps. Had they to be cut 900 long, 45 in would be 56.25 before washing, thirteen.
   */
  @Test
  void noPlanCanDoWithLessThanTheAreaOfItsPieces() {
    Pieces strips = new Pieces(2, 900, 0, 12, 0, 10, .125);
    assertEquals(45, FABRIC.lowerBound(strips, STRETCHING));
    assertEquals(58.5, FABRIC.lowerBound(strips, STRAIGHT));
  }
}
