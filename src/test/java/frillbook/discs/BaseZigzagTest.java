package frillbook.discs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import frillbook.discs.BasePlaces.Place;
import frillbook.measure.LengthText;
import frillbook.measure.LengthUnit;
import frillbook.measure.Rounding;
import frillbook.measure.Tape;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand for cushions of 18 in. Drawn in by 5 %, bases are 19 ÷ 0.95 = 20 in and backs 19
 * in. There are no selvages, so that the usable width is the width.
 */
class BaseZigzagTest {
  private static Briefs twenties(int quantity, double width) {
    return Briefs.inch()
        .with("draw_in", .05)
        .with("selvage", 0)
        .with("quantity", quantity)
        .with("base_fabric_width", width);
  }

  private static BaseFabric fabric(Briefs briefs) {
    Brief brief = briefs.brief();
    return BaseFabric.of(
        brief, DiscSizes.of(brief), Fabric.of(brief.fabric(), brief.base().baseFabricWidth()));
  }

  private static BasePlaces places(Briefs briefs) {
    DiscSizes sizes = DiscSizes.of(briefs.brief());
    return new BasePlaces(sizes, fabric(briefs));
  }

  /**
   * Drawn in by 4 %, bases are 19 7/8 in. One to a line; 36 − 19.875 = 16.125 across and √(19.875²
   * − 16.125²) = √135 = 11.619 along, marked 11 5/8, eleven times; 19 7/8 + 127 7/8 = 147 3/4, 33
   * steps of 4 1/2 in. A grid would take 6 × 19 7/8 + 6 × 19 = 233 1/4.
   */
  @Test
  void sixBasesAndSixBacksTakeTwoThirdsOfAGrid() {
    BaseFabric fabric = fabric(twenties(6, 36).with("draw_in", .04));
    assertEquals(147.75, fabric.baseUsedLength());
    assertEquals(Math.sqrt(135), fabric.zigzag().rowStep(), 1e-9);
    assertEquals(148.5, fabric.baseBuyLength());
    assertEquals(233.25, fabric.grid().length());
  }

  /** 3-4-5 triangles: 12, 16, 20. Lines of k take 2k − 1 shifts and a disc of the width. */
  @ParameterizedTest
  @CsvSource({"36, 1, 16, 12", "32, 1, 12, 16", "56, 2, 12, 16"})
  void everySecondLineIsMovedInAndNearer(double width, int perLine, double shift, double step) {
    BaseFabric fabric = fabric(twenties(5, width));
    assertTrue(fabric.baseInZigzag());
    assertEquals(perLine, fabric.basePerRow());
    assertEquals(shift, fabric.discs().shift(), 1e-9);
    assertEquals(2 * shift, fabric.discs().pitch(), 1e-9);
    assertEquals(step, fabric.discs().rowStep(), 1e-9);
  }

  /**
   * Two of 20 in to a line of 55: 35 ÷ 3 = 11.667 across, marked 11 5/8; √(400 − 135.14) = 16.275
   * along, marked 16 5/16. At 16 1/4, the nearest eighth, centres would be √(135.14 + 264.06) =
   * 19.98 in apart.
   */
  @Test
  void inchesFromLineToLineAreRoundedUp() {
    DiscRows discs = fabric(twenties(5, 55)).discs();
    assertEquals(11.625, discs.shift());
    assertEquals(16.3125, discs.rowStep());
  }

  /**
   * Two of 50 cm, as 45 cm and two seams of 1.5 drawn in by 4 % are, to a line of 139: 89 ÷ 3 =
   * 29.67 across, marked 29.6; √(2500 − 876.16) = 40.297 along, marked 40.3.
   */
  @Test
  void centimetresFromLineToLineAreRoundedUp() {
    Briefs five = Briefs.inch().inMillimetres().with("diameter", 45).with("quantity", 5);
    Briefs fifties = five.with("seam_allowance", 1.5).with("marking_step", .5);
    Briefs narrow = fifties.with("base_fabric_width", 140).with("selvage", .5);
    DiscRows discs = fabric(narrow).discs();
    assertEquals(29.6, discs.shift());
    assertEquals(40.3, discs.rowStep());
  }

  /** Pythagoras over every width; two lines on is two steps, the next of a line two shifts. */
  @ParameterizedTest
  @CsvSource({"INCH, 0.125", "CM, 0.5"})
  void discsMarkedAsIsSaidKeepClear(LengthUnit unit, double sizes) {
    int lines = 0;
    for (int tried = 80; tried < 200; tried += 7) {
      double disc = tried * sizes;
      for (double width = disc; width < 5 * disc; width += .377 * sizes) {
        int perRow = Rounding.down(width / disc);
        DiscRows rows = DiscRows.zigzag(unit, 9, perRow, disc, width);
        double step = told(unit, rows.rowStep());
        double shift = told(unit, rows.shift());
        String what = disc + " on " + width;
        assertTrue(Math.hypot(step, shift) >= disc - 1e-9, what);
        assertTrue(2 * step >= disc - 1e-9, what);
        assertTrue(disc + (2 * perRow - 1) * shift <= width + 1e-6, what);
        lines++;
      }
    }
    assertTrue(lines > 1000);
  }

  /** What a sentence says, read back. */
  private static double told(LengthUnit unit, double length) {
    return LengthText.parse(Tape.say(unit, length), unit).orElseThrow();
  }

  /** 39 − 20 = 19 across, √(400 − 361) = 6.2 along: each disc would lie on the one before last. */
  @Test
  void linesComeNoNearerThanHalfADisc() {
    BaseFabric fabric = fabric(twenties(5, 39));
    assertEquals(10, fabric.discs().rowStep());
    assertEquals(20 + 9 * 10, fabric.baseUsedLength());
  }

  /** Three to a line from 20 + 2 1/2 × 20 = 70 in on. */
  @ParameterizedTest
  @CsvSource({"70, true", "69.875, false"})
  void discsOfALineTouchAtTheNearest(double width, boolean inZigzag) {
    assertEquals(inZigzag, fabric(twenties(12, width)).baseInZigzag());
  }

  /** A disc beside the other, in one line either way. */
  @Test
  void ofTwoEqualLengthsTheGridIsTaken() {
    BaseFabric fabric = fabric(twenties(1, 56));
    assertFalse(fabric.baseInZigzag());
    assertEquals(20, fabric.grid().length());
    assertEquals(20, fabric.zigzag().length());
  }

  /** Five bases and five backs by two: 20 + 4 × 16. */
  @Test
  void backsInOneDiscLieAmongTheBases() {
    BasePlaces places = places(twenties(5, 56));
    assertEquals(84, places.fabric().baseUsedLength(), 1e-9);
    assertEquals(10, places.discs());
    assertEquals(0, places.backs());
  }

  /** A matching disc to each of four cushions: twelve discs by two in six lines, 20 + 5 × 16. */
  @Test
  void matchingDiscsLieAmongTheBases() {
    Briefs four = twenties(4, 56).with("matching_discs", 0).with("back_matching_discs", 1);
    BasePlaces places = places(four.with("matching_disc_fabric", "base"));
    assertEquals(12, places.discs());
    assertEquals(100, places.fabric().baseUsedLength(), 1e-9);
  }

  /** The second line begins 12 in further in and ends against the other selvage. */
  @Test
  void discsLieInZigzag() {
    assertEquals(
        List.of(
            new Place(10, 10),
            new Place(10, 34),
            new Place(26, 22),
            new Place(26, 46),
            new Place(42, 10)),
        IntStream.range(0, 5).mapToObj(places(twenties(5, 56))::disc).toList());
  }

  private static Briefs zipped(int quantity) {
    return twenties(quantity, 56).with("back_style", "zipped_halves").with("zip_seam", .25);
  }

  /** Two lines of bases take 36 in; eight halves of 19 × 9 3/4 by two take four lines, 39 in. */
  @Test
  void halvesOfBacksLieBehindAZigzag() {
    BasePlaces places = places(zipped(4));
    assertEquals(75, places.fabric().baseUsedLength(), 1e-9);
    assertEquals(
        List.of(new Place(36, 0), new Place(36, 19), new Place(45.75, 0)),
        IntStream.range(0, 3).mapToObj(places::back).toList());
  }

  /**
   * Three bases: in zigzag 36 in and three lines of halves, 65 1/4 in all; in a grid 40 in with two
   * halves beside the third base, and two lines of halves, 59 1/2.
   */
  @Test
  void roomBesideTheLastBaseMayOutweighTheZigzag() {
    BaseFabric fabric = fabric(zipped(3));
    assertEquals(65.25, fabric.zigzag().length(), 1e-9);
    assertEquals(59.5, fabric.baseUsedLength());
    assertEquals(2, fabric.backs().beside());
  }

  /** Six bases, then six matching discs, then six backs. */
  @ParameterizedTest
  @CsvSource({"0,false", "5,false", "6,true", "11,true", "12,false", "17,false"})
  void matchingDiscsLieBetweenBasesAndBacks(int disc, boolean matching) {
    Briefs six = twenties(6, 36).with("matching_disc_fabric", "base");
    assertTrue(fabric(six).baseInZigzag());
    assertEquals(18, places(six).discs());
    assertEquals(matching, places(six).isMatching(disc));
  }
}
