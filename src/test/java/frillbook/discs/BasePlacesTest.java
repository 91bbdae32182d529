package frillbook.discs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.discs.BasePlaces.Place;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Four cushions of 18 in with zipped halves on fabric of 64 in less two selvages of 1/2 in, worked
 * by hand: bases 19 7/8 in, halves in rectangles of 9 3/4 along by 19 in across. Three bases fill
 * 59 5/8 of the 63 in, so the fourth begins a second row; beside it 43 1/8 in hold two halves
 * across, and its 19 7/8 in two behind each other. The other four halves lie in rows of three.
 */
class BasePlacesTest {
  private static BasePlaces places() {
    Brief brief =
        Briefs.inch()
            .with("quantity", 4)
            .with("back_style", "zipped_halves")
            .with("zip_seam", .25)
            .with("base_fabric_width", 64)
            .brief();
    DiscSizes sizes = DiscSizes.of(brief);
    Fabric fabric = Fabric.of(brief.fabric(), brief.base().baseFabricWidth());
    return new BasePlaces(sizes, BaseFabric.of(brief, sizes, fabric));
  }

  /** Centres half a disc from the edges, then a disc apart. */
  @Test
  void basesLieSideBySideAndThenInANewRow() {
    assertEquals(
        List.of(
            new Place(9.9375, 9.9375),
            new Place(9.9375, 29.8125),
            new Place(9.9375, 49.6875),
            new Place(29.8125, 9.9375)),
        IntStream.range(0, 4).mapToObj(places()::disc).toList());
  }

  /** The last row begins at 19 7/8 and its one base takes 19 7/8 of the width. */
  @Test
  void theFirstHalvesLieBehindEachOtherBesideTheLastBase() {
    assertEquals(
        List.of(
            new Place(19.875, 19.875),
            new Place(29.625, 19.875),
            new Place(19.875, 38.875),
            new Place(29.625, 38.875)),
        IntStream.range(0, 4).mapToObj(places()::back).toList());
  }

  /** Two rows of bases take 39 3/4; 39 3/4 + 9 3/4 = 49 1/2. */
  @Test
  void theOtherHalvesLieInRowsOfTheirOwn() {
    assertEquals(
        List.of(
            new Place(39.75, 0), new Place(39.75, 19), new Place(39.75, 38), new Place(49.5, 0)),
        IntStream.range(4, 8).mapToObj(places()::back).toList());
  }

  @Test
  void everyCushionHasTwoHalves() {
    assertEquals(8, places().backs());
  }

  @Test
  void twoHalvesAreAsDeepAsABase() {
    assertEquals(2, places().sizes().backDeep());
  }

  /** One base of 19 7/8 in. */
  @Test
  void theLastRowTakesTheWidthOfItsBases() {
    assertEquals(19.875, places().lastWidth());
  }

  /** Two cushions, backs in one disc: the grid holds two bases, and then two matching discs. */
  @Test
  void matchingDiscsFollowTheBases() {
    Brief brief =
        Briefs.inch()
            .with("quantity", 2)
            .with("back_style", "zipped_halves")
            .with("matching_disc_fabric", "base")
            .brief();
    DiscSizes sizes = DiscSizes.of(brief);
    Fabric fabric = Fabric.of(brief.fabric(), brief.base().baseFabricWidth());
    BasePlaces places = new BasePlaces(sizes, BaseFabric.of(brief, sizes, fabric));
    assertEquals(4, places.discs());
    assertEquals(
        List.of(false, false, true, true, false),
        IntStream.range(0, 5).mapToObj(places::isMatching).toList());
  }
}
