package frillbook.offcut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Filled;
import frillbook.brief.Grain;
import frillbook.straight.StraightPlan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips 2 wide without discs; worked by hand. */
class OffcutTest {
  /** Thirty strips of the fabric's width or length, of which so many are cut. */
  private static OnTable thirty(Grain grain, double width, double strip, int full, double... odd) {
    StraightPlan plan =
        Filled.of(
            StraightPlan.class,
            Map.of(
                "length",
                Tables.length(60),
                "stripLength",
                strip,
                "cut",
                Tables.cut(full, odd.length),
                "perLane",
                1,
                "full",
                30));
    return Tables.straight(grain, width, 0, plan, List.of(), odd);
  }

  private static void assertLeft(Place place, double length, double width, Offcut offcut) {
    assertEquals(place, offcut.remnantPlace());
    assertEquals(length, offcut.remnantLength(), 1e-12);
    assertEquals(width, offcut.remnantWidth(), 1e-12);
  }

  /** Across 50 two strips are not cut: 4 of the length, all of the width; along, 4 of 60. */
  @Test
  void itsLengthLiesAlongTheSelvage() {
    assertLeft(Place.BEHIND, 4, 50, Offcut.of(thirty(Grain.CROSSWISE, 50, 50, 28)));
    assertLeft(Place.BEHIND, 60, 4, Offcut.of(thirty(Grain.LENGTHWISE, 60, 60, 28)));
  }

  /** On the bias a square of 13 and one of 13 1/2, 30 by 20 beside the bands. */
  @Test
  void theLargestOfAllPlacesIsTold() {
    Offcut offcut = Offcut.of(BiasRoomTest.table(7, 0, 10));
    assertLeft(Place.BANDS, 30, 20, offcut);
    assertEquals(
        List.of(Place.values()), offcut.leftovers().stream().map(Leftover::leftoverPlace).toList());
  }

  @Test
  void whereNothingIsLeftItLiesNowhere() {
    assertLeft(Place.NOWHERE, 0, 0, Offcut.of(thirty(Grain.CROSSWISE, 50, 50, 30)));
  }

  /** Strips of 46 leave 4 at the end of 60, as much as two that are not cut: 4 by 60, 60 by 4. */
  @Test
  void ofEquallyLargePlacesTheFirstIsTold() {
    Offcut offcut = Offcut.of(thirty(Grain.LENGTHWISE, 60, 56, 28));
    assertLeft(Place.BEHIND, 60, 4, offcut);
  }

  /** 1.5 by 2.25 in, and a hair. */
  @Test
  void anAreaIsSettled() {
    assertEquals(3.375, Leftover.of(Place.END, 1.5, 2.25).leftoverArea());
    assertEquals(6.000001, Leftover.of(Place.END, 2, 3.00000023).leftoverArea(), 1e-12);
  }

  @Test
  void lessThanNothingIsNothing() {
    assertEquals(new Leftover(Place.END, 0, 3, 0), Leftover.of(Place.END, -2, 3));
    assertEquals(new Leftover(Place.END, 2, 0, 0), Leftover.of(Place.END, 2, -3));
  }

  @ParameterizedTest
  @CsvSource({"3,50", "0,41"})
  void theTableHoldsTheLongestStripThatIsCut(int full, double table) {
    assertEquals(table, Offcut.of(thirty(Grain.CROSSWISE, 50, 50, full, 41, 40)).tableLength());
  }

  @Test
  void oneStripOfTheCornerMayBeLongerThanAFullOne() {
    assertEquals(52, Offcut.of(thirty(Grain.CROSSWISE, 50, 50, 3, 52)).tableLength());
  }

  /** √2 × 45. */
  @Test
  void onTheBiasTheTableHoldsALineFromEdgeToEdge() {
    assertEquals(63.639610, Offcut.of(BiasRoomTest.table(0, 0, 10)).tableLength(), 5e-7);
  }
}
