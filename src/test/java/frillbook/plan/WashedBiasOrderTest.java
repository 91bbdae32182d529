package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.WorkedOrders;
import frillbook.materials.Weight;
import frillbook.naming.NamedValues;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@link WorkedOrders#washedBias} takes, worked by hand from what stands there. */
class WashedBiasOrderTest {
  private ChosenGrain work;

  @BeforeEach
  void planTheOrder() {
    work = WorkedOrders.work(WorkedOrders.washedBias());
  }

  private static void assertPiece(CutPiece piece, int count, double length, double width) {
    assertEquals(count, piece.cutCount(), piece::toString);
    assertEquals(length, piece.size().orElseThrow().cutLength(), 5e-7, piece::toString);
    assertEquals(width, piece.size().orElseThrow().cutWidth(), 1e-9, piece::toString);
  }

  /**
   * Six matching discs, the four strips from edge to edge and the nineteen longest from the
   * corners.
   */
  @Test
  void thePiecesAreThoseOfTheMiddleAndTheLongestOfTheCorners() {
    List<CutPiece> pieces = work.cutList();
    assertEquals(21, pieces.size(), pieces::toString);
    assertPiece(pieces.get(0), 6, 44, 44);
    assertPiece(pieces.get(1), 4, 203.646753, 5);
    for (int pair = 0; pair < 10; pair++) {
      double mean = pair == 0 ? 0 : 5;
      assertPiece(pieces.get(2 + 2 * pair), 1, 201.033621 - 10 * pair + mean, 5);
      if (pair < 9) {
        assertPiece(pieces.get(3 + 2 * pair), 1, 200 - 10 * pair + mean, 5);
      }
    }
  }

  @Test
  void theTotalsCountThem() {
    CutTotals total = work.total();
    assertEquals(203.646753, total.stripLength(), 5e-7);
    assertEquals(203.646753, total.firstStripLength(), 5e-7);
    assertEquals(4, total.fullCount());
    assertEquals(19, total.oddCount());
    assertEquals(23, total.stripCount());
    assertEquals(22, total.runCount());
    assertEquals(21, total.joinCount());
    assertEquals(116.033621, total.shortestCut(), 5e-7);
  }

  /** All six matching discs lie in two bands of three. */
  @Test
  void theBandsHoldAllMatchingDiscs() {
    NamedValues plan = NamedValues.of(Plan.of(WorkedOrders.washedBias().brief()));
    assertEquals(6.0, plan.lines().get("band_discs"));
  }

  /** What 22 strips add, 838.345800 + 3041.400189, and the loss of a seam more than there are. */
  @Test
  void theRunIsLongerThanTheOrderBySomeSlack() {
    assertEquals(4.242641, work.total().joinLoss(), 5e-7);
    assertEquals(3883.988630, work.total().joinedLength(), 2e-6);
  }

  /** 20 ÷ √2 = 14.142136 and 5 × √2 = 7.071068; no matching disc stands in a corner. */
  @Test
  void cutLinesAreMarkedAlongTheEdge() {
    assertEquals(14.142136, work.total().firstMark(), 5e-7);
    assertEquals(7.071068, work.total().markStep(), 5e-7);
    assertEquals(0, work.total().discPush());
    assertEquals(0, work.total().lineMatchingDiscs());
  }

  /** Eighteen strips of either corner end before the other edges, from the corners on. */
  @Test
  void cornerStripsGoTogetherInPairs() {
    assertEquals(18, work.total().cornerPairs());
    assertEquals(0, work.total().nearUnpaired());
    assertEquals(0, work.total().farUnpaired());
  }

  /**
   * 1.98 times full, without a spare: 3 × (629.167406 × 1.98 + 2) − 4.242641 − 838.345800 =
   * 2900.665951 for the shorter strips. Seven pairs make 2786.300168; of the eighth the strip of
   * 126.033621 alone, recut to 121.033621, adds 1.05 × 121.033621 − 4.242641 = 122.842661, which is
   * enough: 4 + 2 + 14 + 1 strips, and 2909.142829 + 838.345800 + 4.242641 long.
   */
  @Test
  void theLastStripOfAPairMayDoWithoutItsPartner() {
    CutTotals total =
        WorkedOrders.work(WorkedOrders.washedBias().with("fullness", 1.98).with("spare_strips", 0))
            .total();
    assertEquals(21, total.stripCount());
    assertEquals(20, total.joinCount());
    assertEquals(20, total.joinsPlaced());
    assertEquals(121.033621, total.loneLength(), 5e-7);
    assertEquals(3751.731270, total.joinedLength(), 2e-6);
    assertEquals(0, work.total().loneLength());
  }

  /** Two metres will not do even by area, so three are as good as can be. */
  @Test
  void threeMetresAreBought() {
    assertEquals(300, work.total().buyLength());
    assertEquals(300, work.total().fabricLowerBound());
    assertEquals(1, work.total().fabricRatio());
  }

  /** Base fabric: the working stands with the materials. */
  @Test
  void theShopIsAskedForMetres() {
    assertEquals(3, work.frillFabricOrder());
    assertEquals(2, Plan.of(WorkedOrders.washedBias().brief()).base().baseFabricOrder());
  }

  /**
   * Discs cut: 3 bases, 3 × 2 halves of backs, 3 × 2 matching discs, 3 × 2 of interfacing make 21.
   * Rings: 3 × 10. Each spiral has two ends. In metres: the flat strips 37.810044 hemmed, pressed
   * and pulled up, twice that gathered, the rows 3 × 6.291674 = 18.875022, the edge seam 3 × π ×
   * 0.40 = 3.769911.
   */
  @ParameterizedTest
  @CsvSource({
    "talk, 1",
    "sample, 1",
    "cut_strips, 23",
    "cut_discs, 21",
    "fuse, 6",
    "join_strips, 21",
    "finish_edge, 37.810044",
    "press_strip, 37.810044",
    "gather, 75.620089",
    "pull_up, 37.810044",
    "mark_rings, 30",
    "tack, 18.875022",
    "sew_rows, 18.875022",
    "tuck_ends, 6",
    "fit_zip, 3",
    "make_back, 6",
    "close_edge, 3.769911",
    "fill_close, 3",
    "finish_off, 3",
    "pack, 3"
  })
  void everyTaskIsDrivenByTheWholeOrder(String name, double amount) {
    assertEquals(amount, WorkedOrders.task(work, name).taskAmount(), 5e-7);
  }

  /**
   * In metres: two gathering rows 75.620089; 21 joins of 0.05 sewn twice 2.10; the hem 37.810044;
   * the rows 18.875022; the edge seam 3.769911; two lines across each back, 3 × 2 × 0.42 = 2.52.
   */
  @ParameterizedTest
  @CsvSource({
    "gathering, 75.620089",
    "joins, 2.1",
    "free_edge, 37.810044",
    "rows, 18.875022",
    "tacking, 18.875022",
    "edge_seam, 3.769911",
    "back, 2.52"
  })
  void everySeamIsThatOfTheWholeOrder(String name, double metres) {
    assertEquals(metres, WorkedOrders.seam(work, name).seamLength(), 5e-7);
  }

  @ParameterizedTest
  @CsvSource({
    "gathering, 189.050222", // 75.620089 × 2.5
    "joins, 5.25", // 2.1 × 2.5
    "free_edge, 94.525111", // 37.810044 × 2.5
    "rows, 47.187555", // 18.875022 × 2.5
    "tacking, 22.650027", // 18.875022 × 1.2
    "edge_seam, 9.424778", // 3.769911 × 2.5
    "back, 6.3" // 2.52 × 2.5
  })
  void everySeamTakesItsOwnThread(String name, double metres) {
    assertEquals(metres, WorkedOrders.seam(work, name).seamThread(), 6e-7);
  }

  @Test
  void beneathCentimetresLengthsAreShownInMetres() {
    assertEquals(3.769911, WorkedOrders.seam(work, "edge_seam").seamShown(), 5e-7);
    assertEquals(9.424778, WorkedOrders.seam(work, "edge_seam").threadShown(), 6e-7);
    assertEquals(3.769911, WorkedOrders.task(work, "close_edge").taskShown(), 5e-7);
    assertEquals(4, WorkedOrders.task(work, "close_edge").taskShownRate(), 1e-9);
  }

  /**
   * As used, in metres before washing: strips and matching discs 188.388667 ÷ 0.9 = 209.320741 cm.
   * Base fabric is (100 − 2) × 0.96 = 94.08 wide: bases two and one with a half back beside it, 2 ×
   * 44 = 88, and five half backs by two, 3 × 22.5 = 67.5: 155.5 ÷ 0.9 = 172.777778 cm. Interfacing
   * is not washed: six discs by two from 90 cm, 3 × 44 = 132 cm.
   *
   * <p>Filling: 1.2185242 × 20³ = 9748.1936 cm³ to the limit (Mylar balloon), half of it at 20 g a
   * litre 97.481936 g, for three 292.445808 g: 1.462229 bags of 200.
   *
   * <p>Thread: 2.5 × (75.620089 + 2.1 + 37.810044 + 18.875022 + 3.769911 + 2.52) + 1.2 × 18.875022
   * = 374.387693 m, and 15 % for waste 430.545847: 2.152729 reels of 200.
   */
  @ParameterizedTest
  @CsvSource({
    "frill_fabric, 2.093207, 3",
    "base_fabric, 1.727778, 2",
    "interfacing, 1.32, 2",
    "zips, 3, 3",
    "filling, 1.462229, 2",
    "thread, 2.152729, 3"
  })
  void everyMaterialIsNeededAsUsedAndBoughtWhole(String name, double used, double bought) {
    assertEquals(used, WorkedOrders.material(work, name).materialNeeded(), 6e-7);
    assertEquals(bought, WorkedOrders.material(work, name).materialBought(), 1e-9);
  }

  @Test
  void theSameIsSaidOnceMoreInTheirOwnUnits() {
    Costing costing = work.costing();
    assertEquals(3, costing.zipCount());
    assertEquals(6, costing.interfacing().interfacingCount());
    assertEquals(188.388667, costing.frillUsedLength(), 5e-7);
    assertEquals(430.545847, costing.thread().threadLength(), 5e-7);
    assertEquals(3, costing.thread().threadReels());
  }

  /**
   * One cushion: the strip, before it stretched, 1260.334812 × 5 ÷ 1.05 = 6001.594343 cm² and two
   * matching discs of π/4 × 44² = 1520.530844 cm² at 80 g/m² weigh 72.341248 g; base and back
   * 1520.530844 + π/4 × 42 × 45 = 3004.933373 cm² at 150 45.074001 g; two discs of interfacing at
   * 60 18.246370 g; filling 97.481936 g.
   */
  @Test
  void aCushionWeighsItsFabricsAndItsFilling() {
    Weight weight = work.costing().weight();
    assertEquals(72.341248, weight.frillWeight(), 5e-7);
    assertEquals(45.074001, weight.baseWeight(), 5e-7);
    assertEquals(18.246370, weight.interfacingPart(), 5e-7);
    assertEquals(233.143555, weight.finishedWeight(), 2e-6);
  }
}
