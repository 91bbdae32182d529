package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.WorkedOrders;
import frillbook.materials.Material;
import frillbook.materials.Weight;
import frillbook.thread.Seam;
import frillbook.time.Task;
import frillbook.time.TaskName;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@link WorkedOrders#ringsAcross} takes, worked by hand from what stands there. */
class RingsAcrossOrderTest {
  private ChosenGrain work;

  @BeforeEach
  void planTheOrder() {
    work = WorkedOrders.work(WorkedOrders.ringsAcross());
  }

  /** 12 × 2 1/4 in of fabric is exactly six eighths of a yard, and no less would do. */
  @Test
  void twelveStripsAcrossAreCut() {
    CutTotals total = work.total();
    assertEquals(44, total.stripLength());
    assertEquals(44, total.firstStripLength());
    assertEquals(12, total.fullCount());
    assertEquals(12, total.stripCount());
    assertEquals(11, total.joinCount());
    assertEquals(44, total.shortestCut());
    assertEquals(27, total.buyLength());
    assertEquals(1, total.fabricRatio());
  }

  /** 12 × 43.5 and the loss that the first has no seam for. */
  @Test
  void theRunIsAllTwelve() {
    assertEquals(.5, work.total().joinLoss(), 1e-9);
    assertEquals(522.5, work.total().joinedLength(), 1e-9);
  }

  @Test
  void cutLinesLieAStripApart() {
    assertEquals(2.25, work.total().firstMark());
    assertEquals(2.25, work.total().markStep());
    assertEquals(0, work.total().discPush());
  }

  /** Without matching discs the list still has their line, so that nobody misses it. */
  @Test
  void theListSaysThatThereAreNoMatchingDiscs() {
    assertEquals(2, work.cutList().size());
    assertEquals(0, work.cutList().get(0).cutCount());
    assertEquals(Optional.empty(), work.cutList().get(0).size());
  }

  /** 27 in are 0.75 yd of either fabric; the base fabric's working stands with the materials. */
  @Test
  void theShopIsAskedForYards() {
    assertEquals(.75, work.frillFabricOrder());
    assertEquals(.75, Plan.of(WorkedOrders.ringsAcross().brief()).base().baseFabricOrder());
  }

  /**
   * Discs: 2 bases, 2 × 2 pieces of backs and 2 of interfacing. Ten rings have two ends each. In
   * metres: the flat strips 485.738898 × 0.0254 = 12.337768, twice that gathered by hand, which
   * pulls them up, the rows 2 × 96.747780 × 0.0254 = 4.914787, the edge seam 2 × π × 12 × 0.0254 =
   * 1.915115.
   */
  @ParameterizedTest
  @CsvSource({
    "talk, 1",
    "sample, 1",
    "cut_strips, 12",
    "cut_discs, 8",
    "fuse, 2",
    "join_strips, 11",
    "press_strip, 12.337768",
    "gather, 24.675536",
    "mark_rings, 10",
    "tack, 4.914787",
    "sew_rows, 4.914787",
    "tuck_ends, 20",
    "make_back, 4",
    "close_edge, 1.915115",
    "fill_close, 2",
    "finish_off, 2",
    "pack, 2"
  })
  void everyTaskIsDrivenByTheWholeOrder(String name, double amount) {
    Task task = WorkedOrders.task(work, name);
    assertEquals(amount, task.taskAmount(), 5e-7);
  }

  /**
   * Base fabric that is wide enough, a raw edge, strips that are pulled up while they are gathered,
   * a back without a zip.
   */
  @Test
  void whatIsNotDoneIsNotListed() {
    List<TaskName> listed = WorkedOrders.tasks(work).stream().map(Task::taskName).toList();
    List<TaskName> others =
        Stream.of(TaskName.values()).filter(name -> !listed.contains(name)).toList();
    assertEquals(
        List.of(TaskName.JOIN_WIDTHS, TaskName.FINISH_EDGE, TaskName.PULL_UP, TaskName.FIT_ZIP),
        others);
  }

  @ParameterizedTest
  @CsvSource({
    "talk, 20",
    "sample, 15",
    "cut_strips, 28", // 12 × 1.5 + 10
    "cut_discs, 29", // 8 × 3 + 5
    "fuse, 6", // 2 × 3
    "join_strips, 38", // 11 × 3 + 5
    "press_strip, 3.701330", // 12.337768 × 0.3
    "gather, 53.182188", // 24.675536 × 1.75 + 10
    "mark_rings, 10", // 10 × 0.5 + 5
    "tack, 12.286968", // 4.914787 × 2.5
    "sew_rows, 29.659149", // 4.914787 × 4 + 10
    "tuck_ends, 20", // 20 × 1
    "make_back, 25", // 4 × 5 + 5
    "close_edge, 12.660460", // 1.915115 × 4 + 5
    "fill_close, 35", // 2 × 15 + 5
    "finish_off, 20", // 2 × 10
    "pack, 12" // 2 × 6
  })
  void everyTaskTakesItsOwnMinutes(String name, double minutes) {
    assertEquals(minutes, WorkedOrders.task(work, name).taskMinutes(), 6e-7);
  }

  /**
   * Minutes for one and to set up, from the times of the brief, and the amounts times the first.
   */
  @ParameterizedTest
  @CsvSource({
    "talk, 20, 0, 20",
    "sample, 15, 0, 15",
    "cut_strips, 1.5, 10, 18", // 12 × 1.5
    "cut_discs, 3, 5, 24", // 8 × 3
    "fuse, 3, 0, 6", // 2 × 3
    "join_strips, 3, 5, 33", // 11 × 3
    "press_strip, 0.3, 0, 3.701330", // 12.337768 × 0.3
    "gather, 1.75, 10, 43.182188", // 24.675536 × 1.75
    "mark_rings, 0.5, 5, 5", // 10 × 0.5
    "tack, 2.5, 0, 12.286968", // 4.914787 × 2.5
    "sew_rows, 4, 10, 19.659149", // 4.914787 × 4
    "tuck_ends, 1, 0, 20", // 20 × 1
    "make_back, 5, 5, 20", // 4 × 5
    "close_edge, 4, 5, 7.660460", // 1.915115 × 4
    "fill_close, 15, 5, 30", // 2 × 15
    "finish_off, 10, 0, 20", // 2 × 10
    "pack, 6, 0, 12" // 2 × 6
  })
  void everyTaskHasARateAndIsSetUpOnce(String name, double rate, double setup, double work) {
    Task task = WorkedOrders.task(this.work, name);
    assertEquals(rate, task.taskRate(), 1e-12);
    assertEquals(setup, task.taskSetup(), 1e-12);
    assertEquals(work, task.taskWork(), 6e-7);
  }

  /** A yard is 0.9144 m: by hand, 12.337768, 4.914787 and 1.915115 m, and the rates times that. */
  @ParameterizedTest
  @CsvSource({
    "cut_strips, 12, 1.5",
    "press_strip, 13.492747, 0.27432",
    "gather, 26.985494, 1.6002",
    "tack, 5.374876, 2.286",
    "sew_rows, 5.374876, 3.6576",
    "mark_rings, 10, 0.5",
    "close_edge, 2.094395, 3.6576"
  })
  void lengthsAreShownInYards(String name, double yards, double minutes) {
    Task task = WorkedOrders.task(work, name);
    assertEquals(yards, task.taskShown(), 1e-6);
    assertEquals(minutes, task.taskShownRate(), 1e-9);
  }

  /** By hand: 1.915115 ÷ 0.9144 and 4.787787 ÷ 0.9144. */
  @Test
  void seamsAreShownInYards() {
    Seam seam = WorkedOrders.seam(work, "edge_seam");
    assertEquals(2.094395, seam.seamShown(), 1e-6);
    assertEquals(5.235988, seam.threadShown(), 1e-6);
  }

  /** The sum of those: 369.490095 minutes. */
  @Test
  void theyAddUpToSixHoursAndNineMinutes() {
    assertEquals(6.158168, work.costing().hours().hoursTotal(), 5e-7);
    assertEquals(6, work.costing().hours().wholeHours());
    assertEquals(9, work.costing().hours().leftMinutes());
  }

  /**
   * In metres: two gathering rows 24.675536; 11 joins of 2 1/4 in sewn once 0.628650; two hems
   * across each back, 2 × 2 × 13 in = 1.320800.
   */
  @ParameterizedTest
  @CsvSource({
    "gathering, 24.675536",
    "joins, 0.628650",
    "free_edge, 0",
    "rows, 4.914787",
    "tacking, 4.914787",
    "edge_seam, 1.915115",
    "back, 1.320800"
  })
  void everySeamIsThatOfTheWholeOrder(String name, double metres) {
    Seam seam = WorkedOrders.seam(work, name);
    assertEquals(metres, seam.seamLength(), 5e-7);
  }

  @ParameterizedTest
  @CsvSource({
    "gathering, 29.610643", // 24.675536 × 1.2
    "joins, 1.571625", // 0.628650 × 2.5
    "free_edge, 0",
    "rows, 12.286968", // 4.914787 × 2.5
    "tacking, 5.897745", // 4.914787 × 1.2
    "edge_seam, 4.787787", // 1.915115 × 2.5
    "back, 3.302" // 1.320800 × 2.5
  })
  void everySeamTakesItsOwnThread(String name, double metres) {
    assertEquals(metres, WorkedOrders.seam(work, name).seamThread(), 6e-7);
  }

  /**
   * In yards, as used: strips 485.738898 × 2 1/4 ÷ 44 = 24.838921 in. Base fabric 43 in wide: both
   * bases and a piece of a back in one row, 13 5/8, the other three pieces in another, 9 1/2: 23
   * 1/8 in, by eighths of a yard 27. Interfacing 20 in wide: one above the other, 27 1/4 in, by
   * eighths 31 1/2. An overlapping back has no zip.
   *
   * <p>Filling: 1.2185242 × 6³ in³ = 4.313095 L to the limit (Mylar balloon), 60 % of it at 18 g a
   * litre 46.581430 g, for two 93.162860 g: 0.186326 bags of 500.
   *
   * <p>Thread, as below: 57.456768 m, and 15 % for waste 66.075283: 0.660753 reels of 100.
   */
  @ParameterizedTest
  @CsvSource({
    "frill_fabric, 0.689970, 0.75",
    "base_fabric, 0.642361, 0.75",
    "interfacing, 0.756944, 0.875",
    "zips, 0, 0",
    "filling, 0.186326, 1",
    "thread, 0.660753, 1"
  })
  void everyMaterialIsNeededAsUsedAndBoughtWhole(String name, double used, double bought) {
    Material material = WorkedOrders.material(work, name);
    assertEquals(used, material.materialNeeded(), 6e-7);
    assertEquals(bought, material.materialBought(), 1e-9);
  }

  /** Eighths of a yard; whole zips, bags and reels. */
  @ParameterizedTest
  @CsvSource({
    "frill_fabric, 0.125",
    "base_fabric, 0.125",
    "interfacing, 0.125",
    "zips, 1",
    "filling, 1",
    "thread, 1"
  })
  void everyMaterialIsSoldInSteps(String name, double step) {
    assertEquals(step, WorkedOrders.material(work, name).materialStep(), 1e-12);
  }

  /**
   * By hand: of twelve cushions the strips are 12 × 242.869449 = 2914.433388 in, (2914.433388 −
   * 0.5) ÷ 43.5 = 66.99: 67 strips and 66 joins. Sixty are listed.
   */
  @Test
  void joinsPastTheSixtiethAreCountedAlone() {
    ChosenGrain twelve = WorkedOrders.work(WorkedOrders.ringsAcross().with("quantity", 12));
    assertEquals(66, twelve.total().joinCount());
    assertEquals(6, twelve.total().joinsUnlisted());
    assertEquals(0, work.total().joinsUnlisted());
  }

  /**
   * By hand: a tenth longer than two cushions, 534.312788 in, takes (534.312788 − 0.5) ÷ 43.5 =
   * 12.27, so 13 strips. Seams lie at 43.75, 87.25 and so on; the eleventh at 478.75, the twelfth,
   * at 522.25, past the end of the second cushion at 485.738898.
   */
  @Test
  void aJoinPastTheLastCushionHasNoPlace() {
    ChosenGrain longer = WorkedOrders.work(WorkedOrders.ringsAcross().with("joined_margin", .1));
    assertEquals(12, longer.total().joinCount());
    assertEquals(11, longer.total().joinsPlaced());
    assertEquals(1, longer.total().joinsPast());
    assertEquals(11, longer.joins().size());
    assertEquals(2, longer.joins().get(10).joinCushion());
  }

  /**
   * One cushion, a square inch being 6.4516 cm²: the strip 242.869449 × 2 1/4 in² at 80 g/m² weighs
   * 28.204138 g; the base π/4 × 13.625² and the back π/4 × 13 × 19 at 150 32.883336 g; one disc of
   * interfacing at 60 5.643930 g; filling 46.581430 g.
   */
  @Test
  void aCushionWeighsItsFabricsAndItsFilling() {
    Weight weight = work.costing().weight();
    assertEquals(28.204138, weight.frillWeight(), 5e-7);
    assertEquals(32.883336, weight.baseWeight(), 5e-7);
    assertEquals(5.643930, weight.interfacingPart(), 5e-7);
    assertEquals(113.312833, weight.finishedWeight(), 2e-6);
  }
}
