package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizesTest {
  private static Sizes sizes(Briefs briefs) {
    return Plan.of(briefs.brief()).sizes();
  }

  /**
   * By hand: (152 − 2) × 0.96 of frill fabric, (100 − 2) × 0.96 of base fabric, 0.9 of the length.
   */
  @Test
  void washingLeavesLessOfEitherFabric() {
    Sizes sizes = sizes(WorkedOrders.washedBias());
    assertEquals(144, sizes.usableWidth(), 1e-9);
    assertEquals(94.08, sizes.baseWidth().baseUsableWidth(), 1e-9);
    assertEquals(.9, sizes.usableShare(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, false", ".04, 0, true", "0, .1, true"})
  void whatShrinksEitherWayIsWashedFirst(double width, double length, boolean washed) {
    Briefs briefs =
        Briefs.inch().with("wash_shrink_width", width).with("wash_shrink_length", length);
    assertEquals(washed, sizes(briefs).isWashed());
  }

  /**
   * By hand: strips stretch by 5 %, lines lie 5√2 apart, and both passes of a French join count.
   */
  @Test
  void biasStretchesAndFrenchJoinsAreSewnTwice() {
    Sizes sizes = sizes(WorkedOrders.washedBias());
    assertEquals(1.05, sizes.joinGain(), 1e-12);
    assertEquals(7.071068, sizes.cutLineStep(), 5e-7);
    assertEquals(20, sizes.chosenShortestUseful(), 1e-9);
    assertEquals(2, sizes.joinPasses());
    assertTrue(sizes.edgeSewn());
  }

  @Test
  void straightStripsKeepTheirLengthAndPlainJoinsAreSewnOnce() {
    Sizes sizes = sizes(WorkedOrders.ringsAcross());
    assertEquals(1, sizes.joinGain());
    assertEquals(1, sizes.joinPasses());
    assertFalse(sizes.edgeSewn());
  }

  @ParameterizedTest
  @CsvSource({"crosswise,1", "lengthwise,2", "bias,3"})
  void grainsAreNumberedInTheOrderOfTheirRows(String grain, int number) {
    assertEquals(number, sizes(Briefs.inch().with("grain", grain)).grainNo());
  }
}
