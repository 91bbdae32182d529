package frillbook.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class ParcelTest {
  private static Parcel parcel(Briefs briefs) {
    return Filling.of(briefs.brief()).parcel();
  }

  /** As carriers' rule is taught: 30 × 20 × 20 in ÷ 139 = 86.3, charged as 87 lb. */
  @Test
  void aCartonIsChargedByWholePounds() {
    assertEquals(87, Parcel.charged(30, 20, 20, 139));
  }

  /**
   * By hand: 18 in at 60 % is 17.2 across and 4.47 thick. The last ring is 8 1/2 in from the
   * middle, a frill of 2 in leans out to 10 1/2: 21 in. 4.47 + 2 is 7 whole inches. 21 × 21 × 7 ÷
   * 139 = 22.2, so 23 lb of 453.59237 g.
   */
  @Test
  void anEighteenInchCushionGoesIntoACartonOf21By21By7() {
    Parcel parcel = parcel(Briefs.inch());
    assertEquals(21, parcel.overallDiameter(), 1e-12);
    assertEquals(21, parcel.parcelSide());
    assertEquals(7, parcel.parcelHeight());
    assertEquals(10432.62451, parcel.volumetricWeight(), 1e-5);
  }

  /**
   * By hand: 45 cm, ring of 22.5 − 1.2 = 21.3, frill 5: 52.6 cm over it, 53 whole ones. At 60 % 2 ×
   * 22.5 × .49637 ÷ 2 = 11.17 thick (two caps of .50715), with the frill 16.17, so 17. 53² × 17 ÷
   * 5000 = 9.55, so 10 kg.
   */
  @Test
  void aCartonInCentimetresIsChargedByWholeKilograms() {
    Briefs cm =
        new Briefs(
            LengthUnit.CM,
            Briefs.inch()
                .with("diameter", 45)
                .with("edge_clearance", 1.2)
                .with("frill_height", 5)
                .with("parcel_divisor", 5000)
                .inputs());
    assertEquals(52.6, parcel(cm).overallDiameter(), 1e-9);
    assertEquals(17, parcel(cm).parcelHeight());
    assertEquals(10_000, parcel(cm).volumetricWeight(), 1e-9);
  }

  /** Closed form: a strip f times full leans r(f − 1) out at most: 8.5 × .1 = .85, so 18.7 in. */
  @Test
  void aFrillLeansNoFurtherOutThanItsLengthGoesRound() {
    assertEquals(18.7, parcel(Briefs.inch().with("fullness", 1.1)).overallDiameter(), 1e-9);
  }

  /**
   * A ring close to the edge comes in with it: taut, 18 in are .7627598 × 18 = 13.7297 across
   * (Mylar balloon, published), and 2 in more to either side.
   */
  @Test
  void theLastRingLiesNoFurtherOutThanTheFilledEdge() {
    assertEquals(17.7297, parcel(Briefs.inch().with("fill_fraction", 1)).overallDiameter(), 1e-4);
  }

  /** A last ring 4 in from the middle with a frill of 2 in does not reach the edge, 8.588 in. */
  @Test
  void aFrillThatEndsWithinTheEdgeMakesItNoWider() {
    Briefs within = Briefs.inch().with("edge_clearance", 5);
    FilledShape shape = Filling.of(within.brief()).shape();
    assertEquals(shape.filledDiameter(), parcel(within).overallDiameter(), 1e-12);
  }
}
