package frillbook.bias;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.cutting.SearchReach;
import frillbook.cutting.Tally;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;

/**
 * Bias strips of two cushions that each have their own, √2 wide, so that cut lines lie 2 apart
 * along the edge of fabric 10 wide; none shorter than 2√2, seams of 1/2. Worked by hand.
 *
 * <p>A full strip of 10√2 adds 13.642136. A cushion of 20 needs 19.5: one more strip, of 5.857864
 * and a seam, marked as 6.375, and a full strip gives two such. 20 long, thirteen strips lie on the
 * fabric: 2√2, 4√2, 6√2 and 8√2 in either corner, of which 6√2 and 8√2 serve as last, and five full
 * ones.
 */
class BiasOwnStripsTest {
  private static final double ROOT2 = Math.sqrt(2);

  private static final double DISC = 10 * (2 - ROOT2);

  private static final double NET = 13.642136;

  private static BiasCutting cutting(double width, double cushion, int cushions, int spare) {
    Pieces pieces =
        new Pieces(ROOT2, cushions * cushion, cushions, spare, 2 * ROOT2, 2000, 2, DISC, .125, 0);
    return BiasCutting.of(new Fabric(width, 1, 20), pieces, new Join(true, .5, 1));
  }

  @Test
  void stripsOfBothCornersServeAsLast() {
    BiasComb comb = BiasComb.of(cutting(10, 20, 2, 0), 20, 0);
    assertEquals(2, comb.each());
    assertEquals(6.375, comb.last(), 1e-9);
    assertEquals(0, comb.pairs());
    assertEquals(4, comb.served());
  }

  /** Five full strips where two are wanted; one spare is wanted besides. */
  @Test
  void whatIsOverIsCountedInFullStrips() {
    assertEquals(3 * NET, BiasComb.of(cutting(10, 20, 2, 0), 20, 0).over(), 3e-6);
    assertEquals(2 * NET, BiasComb.of(cutting(10, 20, 2, 1), 20, 0).over(), 3e-6);
  }

  /**
   * A cushion of 16.6 needs 2.457864 and a seam more than a full strip, marked as 3. With a disc in
   * the near corner nine strips lie on the fabric, the last four 8√2 to 2√2, of which three are as
   * long as 3; so are 3.150009 and 3.029437 beside the disc.
   */
  @Test
  void stripsBesideADiscServeToo() {
    BiasComb comb = BiasComb.of(cutting(10, 16.6, 2, 0), 20, 1);
    assertEquals(3, comb.last(), 1e-9);
    assertEquals(5, comb.served());
    assertEquals(3 * NET, comb.over(), 3e-6);
  }

  /** For a last of 6.375 neither is long enough, and of the corner 6√2 and 8√2. */
  @Test
  void shortStripsBesideADiscDoNotServe() {
    assertEquals(2, BiasComb.of(cutting(10, 20, 2, 0), 20, 1).served());
  }

  /** For one strip those beside a disc are joined and not counted: 6√2 and 8√2 of the corner. */
  @Test
  void forOneStripNoneBesideADiscIsCounted() {
    BiasComb comb = BiasComb.of(cutting(10, 60.5, 1, 0), 20, 1);
    assertEquals(6, comb.last(), 1e-9);
    assertEquals(2, comb.served());
  }

  /**
   * 9 by 9: seven strips, four shortened by either corner, one by both. 10 by 10: eight, four by
   * either.
   */
  @Test
  void aStripShortenedByBothCornersIsNoLast() {
    assertEquals(-1, BiasComb.of(cutting(9, 20, 2, 0), 9, 0).served());
    assertEquals(4, BiasComb.of(cutting(10, 20, 2, 0), 10, 0).served());
  }

  /**
   * 8 by 7 does not hold both discs. Of full strips of 7√2, each 9.399495, a cushion takes three,
   * the last as short as is joined; three of them a full strip gives. So 4 + 1 are wanted.
   */
  @Test
  void whereDiscsDoNotFitAllStripsAreWanting() {
    BiasComb comb = BiasComb.of(cutting(7, 20, 2, 0), 8, 2);
    assertFalse(comb.fits());
    assertEquals(-1, comb.served());
    assertEquals(-5 * 9.399495, comb.over(), 5e-6);
  }

  /** Two of four are last strips from the corners, and two full ones with them. */
  @Test
  void thePlanCutsOneJoinLessForEachCushion() {
    Pieces pieces = new Pieces(ROOT2, 40, 2, 0, 2 * ROOT2, 2000, 0, DISC, .125, 0);
    BiasCutting cutting = BiasCutting.of(new Fabric(10, 1, 20), pieces, new Join(true, .5, 1));
    BiasPlan plan = BiasFinding.of(cutting, true, new SearchReach(1, 1)).plan().orElseThrow();
    assertEquals(2, plan.cushion().each());
    assertEquals(5, plan.full());
    assertEquals(2, plan.served());
    assertEquals(new Tally(0, 2, 0, 2, 4), plan.cut().all());
    assertEquals(2, plan.cut().joinCount());
  }

  /** A cushion of 25.6 needs 11.957864 more than a full strip, marked as 12: no corner has one. */
  @Test
  void whereNoShorterStripServesFullOnesAreCut() {
    BiasComb comb = BiasComb.of(cutting(10, 25.6, 2, 0), 20, 0);
    assertEquals(0, comb.served());
    assertEquals(NET, comb.over(), 1e-6);
  }
}
