package frillbook.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Grain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One matching disc of 19 7/8 in, in a line or in the near corner; half of it is 9 15/16. */
class BiasCornerTest {
  private static CutLayout layout(double fabricWidth) {
    return CutLayout.of(Briefs.inch().with("fabric_width", fabricWidth).brief(), Grain.BIAS)
        .orElseThrow();
  }

  /**
   * Cut lines begin at the start of the fabric, from the edge that places are measured from; a line
   * of matching discs lies along the other, 35 − 9 15/16 = 25 1/16.
   */
  @Test
  void onALongFabricTheNearCornerIsWhereMeasuringBegins() {
    CutLayout layout = layout(36);
    assertTrue(layout.length() > layout.width());
    assertEquals(List.of(new PlacedDisc(new Point(9.9375, 25.0625), 19.875)), layout.discs());
  }

  /** Turned by a quarter, the longer side lies across: 53 − 9 15/16 = 43 1/16. */
  @Test
  void onAWideFabricTheNearCornerIsAtTheOtherEdge() {
    CutLayout layout = layout(54);
    assertTrue(layout.length() < layout.width());
    assertEquals(List.of(new PlacedDisc(new Point(9.9375, 43.0625), 19.875)), layout.discs());
  }
}
