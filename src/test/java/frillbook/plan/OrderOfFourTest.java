package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.brief.Grain;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Four cushions of 16 in without matching discs, worked by hand.
 *
 * <p>Rows 1 in apart from the centre to the edge are 201.468612 long (computed from the exact
 * spiral). Doubled, and 1 for the ends: 403.937224 for each. Strips are 2 1/4 wide, the fabric 53
 * between its selvages and sold by 4 1/2. A square French join takes 1 1/4.
 */
class OrderOfFourTest {
  private static final double NEED = 403.937224;

  private static final Briefs FOUR =
      Briefs.inch()
          .with("quantity", 4)
          .with("diameter", 16)
          .with("ring_spacing", 1)
          .with("centre_gap", 0)
          .with("edge_clearance", 0)
          .with("fullness", 2)
          .with("matching_discs", 0)
          .with("joined_by", "cushion");

  private static CutTotals total(Briefs briefs) {
    return WorkedOrders.work(briefs).total();
  }

  private static void assertJoined(double joined, CutTotals total) {
    assertEquals(joined, total.joinedLength(), 1e-9);
    assertEquals(joined - NEED, total.joinedSlack(), 1e-6);
  }

  /**
   * A strip across adds 51 3/4. Of the 402.687224 that a cushion takes, seven are 362 1/4, and
   * 40.437224 more are cut 41.687224, marked as 41 3/4, of an eighth strip. 32 strips are just 72
   * in.
   */
  @Test
  void acrossEveryCushionHasSevenFullStripsAndOneCutShort() {
    CutTotals total = total(FOUR);
    assertEquals(8, total.stripsEach());
    assertEquals(7, total.joinsEach());
    assertEquals(28, total.joinCount());
    assertEquals(41.75, total.lastStripLength(), 1e-9);
    assertEquals(4, total.lastFromFull());
    assertEquals(32, total.fullCount());
    assertEquals(72, total.buyLength());
    assertJoined(7 * 51.75 + 41.75, total);
  }

  /** The middle of the first seam is 53 less half of what it takes from the end, 52 3/8. */
  @Test
  void theJoinsOfOneCushionAreListed() {
    var joins = WorkedOrders.work(FOUR).joins();
    assertEquals(7, joins.size());
    IntStream.rangeClosed(1, 7)
        .forEach(n -> assertEquals(51.75 * n + .625, joins.get(n - 1).joinMark(), 1e-9));
    assertTrue(joins.stream().allMatch(join -> join.joinCushion() == 1));
  }

  /**
   * A frill of 12 takes strips 12 1/4 wide, of which four lie side by side. None is longer than
   * 108: the 402.687224 ÷ 106 3/4 are four, (403.937224 + 3 × 1.25) ÷ 4 = 101.921806, marked as
   * 102. Four rows of them are 408, 409 1/2 as sold.
   */
  @Test
  void alongTheFabricEveryCushionHasFourStripsAlike() {
    Briefs wide = FOUR.with(Grain.LENGTHWISE).with("frill_height", 12).with("longest_strip", 108);
    CutTotals total = total(wide);
    assertEquals(4, total.stripsEach());
    assertEquals(12, total.joinCount());
    assertEquals(102, total.stripLength(), 1e-9);
    assertEquals(16, total.stripCount());
    assertEquals(409.5, total.buyLength());
    assertJoined(4 * 102 - 3 * 1.25, total);
  }

  /**
   * From edge to edge a bias strip is 53√2, and its joins take 1.25√2, so it adds 51.75√2 =
   * 73.185552. A cushion takes 402.169457: five of them, 365.927759, and 36.241698, cut 38.009465,
   * marked as 38 1/8.
   *
   * <p>Strips of the corner are 12, 16 1/2 … 70 1/2 long, those from 39 on long enough. After
   * fourteen of them the cut lines lie at 12/√2 + 14 × 2.25√2 = 53.032588, and the twentieth full
   * strip from there ends 20 × 2.25√2 = 63.639610 on, at 116.672198: 117 as sold. So all twenty are
   * full strips, and the corners give the last ones.
   */
  @Test
  void onTheBiasTheCornersGiveTheLastStrips() {
    CutTotals total = total(FOUR.with(Grain.BIAS));
    assertEquals(6, total.stripsEach());
    assertEquals(20, total.joinCount());
    assertEquals(38.125, total.lastStripLength(), 1e-9);
    assertEquals(0, total.lastFromFull());
    assertEquals(20, total.fullCount());
    assertEquals(4, total.oddCount());
    assertEquals(117, total.buyLength());
    assertJoined(5 * 51.75 * Math.sqrt(2) + 38.125, total);
  }

  /**
   * 4 × 403.937224 = 1615.748896; 1 and 3 per cent more are 1631.906385 and 1664.221363. Less a
   * seam, by 51 3/4 each, that is 31.2, 31.5 and 32.1 strips.
   */
  @ParameterizedTest
  @CsvSource({"0,32", ".01,32", ".03,33"})
  void aStripForTheWholeOrderIsLongerByTheMargin(double margin, int strips) {
    CutTotals total = total(FOUR.with("joined_by", "order").with("joined_margin", margin));
    assertEquals(strips, total.runCount());
    assertEquals(strips - 1, total.joinCount());
    assertEquals(strips * 51.75 + 1.25 - 4 * NEED, total.joinedSlack(), 1e-5);
  }

  /** One alone is a whole order. */
  @Test
  void oneCushionIsJoinedAlikeByCushionAndByOrder() {
    Briefs one = FOUR.with("quantity", 1).with("joined_margin", .1);
    assertEquals(total(one.with("joined_by", "order")), total(one));
    assertEquals(8, total(one).runCount());
  }
}
