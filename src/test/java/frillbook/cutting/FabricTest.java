package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FabricTest {
  private static final Fabric FABRIC = new Fabric(40, .8, 4.5);

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

  /**
   * By hand: 900 in of strips 2 in wide stretch from 720, so 1440 in² over 40 are 36 in after
   * washing, ten steps. Had they to be cut 900 long, 45 in would be 56.25 before washing, thirteen.
   */
  @Test
  void noPlanCanDoWithLessThanTheAreaOfItsPieces() {
    Pieces strips = new Pieces(2, 900, 0, 12, 0, 10, .125);
    assertEquals(45, FABRIC.lowerBound(strips, STRETCHING));
    assertEquals(58.5, FABRIC.lowerBound(strips, new Join(false, 1, 1)));
  }
}
