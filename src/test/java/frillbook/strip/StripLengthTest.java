package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import org.junit.jupiter.api.Test;

class StripLengthTest {
  /** By hand: 100 × 2 1/2 + 1 = 251, three of them 753. */
  @Test
  void everyFrillOfAnOrderHasItsOwnEndAllowance() {
    StripLength length = StripLength.of(Briefs.inch().with("quantity", 3).brief(), 100);
    assertEquals(251, length.flatLength());
    assertEquals(753, length.orderFlatLength());
  }
}
