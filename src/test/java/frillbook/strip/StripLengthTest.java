package frillbook.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import org.junit.jupiter.api.Test;

class StripLengthTest {
  /** By hand: 100 × 2 1/2 + 1 = 251, three of them 753. */
  @Test
  void everyFrillOfAnOrderHasItsOwnEndAllowance() {
    StripLength length = StripLength.of(Briefs.inch().with("quantity", 3).brief(), 100);
    assertEquals(251, length.flatLength());
    assertEquals(753, length.orderFlatLength());
  }

  /** By hand: 2 % of 753 are 15.06; strips for each cushion are joined as long as needed. */
  @Test
  void oneStripThatIsCutApartIsJoinedALittleLonger() {
    Briefs three = Briefs.inch().with("quantity", 3).with("joined_margin", .02);
    assertEquals(768.06, StripLength.of(three.brief(), 100).joinedNeed(), 1e-9);
    Brief own = three.with("joined_by", "cushion").brief();
    assertEquals(753, StripLength.of(own, 100).joinedNeed());
  }
}
