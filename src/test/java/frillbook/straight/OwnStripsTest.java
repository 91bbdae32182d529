package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.cutting.CushionStrips;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lengthwise strips of several cushions, all alike.
 *
 * <p>By hand: twelve cushions of 18 in that take 755.403930 each, on 53 in sold by 4 1/2, strips 2
 * 1/4 wide, 23 side by side, French joins of 1 1/4, twelve matching discs of 19 7/8.
 *
 * <p>In one column the discs are 238 1/2 long, and 14 strips lie beside them in 53 − 19 7/8 = 33
 * 1/8, so they are in the way of 9. In two columns they are 119 1/4 long, and 13 1/4 holds 5
 * strips, so they are in the way of 18.
 */
class OwnStripsTest {
  private static final Join JOIN = new Join(false, 1.25, 1);

  private static final Join SEAM = new Join(false, 1, 1);

  private static Pieces pieces(int cushions, int discs, double longest) {
    return pieces(cushions, discs, longest, 0);
  }

  private static Pieces pieces(int cushions, int discs, double longest, double worth) {
    double joined = cushions * 755.403930;
    return new Pieces(2.25, joined, cushions, 0, 12, longest, discs, 19.875, .125, worth);
  }

  private static OwnTry tried(int discs, int each) {
    Fabric fabric = new Fabric(53, 1, 4.5);
    Pieces pieces = pieces(12, discs, 300);
    return OwnTry.of(fabric, pieces, JOIN, DiscColumns.of(pieces, 53), each);
  }

  @Test
  void discsAreInTheWayOfTheStripsThatTheyLieOver() {
    DiscColumns columns = DiscColumns.of(pieces(12, 12, 300), 53);
    assertEquals(23, columns.allLanes());
    assertEquals(2, columns.mostColumns());
    assertEquals(new DiscColumns.Block(238.5, 9), columns.one());
    assertEquals(new DiscColumns.Block(119.25, 18), columns.most());
  }

  @Test
  void withoutDiscsNothingIsInTheWay() {
    assertEquals(new DiscColumns.Block(0, 0), DiscColumns.of(pieces(12, 0, 300), 53).one());
  }

  /**
   * Three strips and their two joins: (755.403930 + 2 × 1.25) ÷ 3 = 252.634643, marked as 252 3/4.
   * Of 36, 28 lie in pairs end to end in the 14 strips' width beside the one column, and the other
   * 8 behind it: 505 1/2, that is 508 1/2 as sold. Of the same 505 1/2 two columns leave five pairs
   * beside them and one row of 18 behind, 28; two rows behind them take 119 1/4 + 505 1/2.
   */
  @Test
  void thirtySixStripsOfTwelveCushionsLieTwoEndToEnd() {
    OwnTry three = tried(12, 3);
    assertEquals(252.75, three.ownStrip(), 1e-9);
    assertEquals(505.5, three.ownColumn(), 1e-9);
    assertEquals(624.75, three.ownColumns(), 1e-9);
    assertEquals(508.5, three.ownCost(), 1e-9);
  }

  /** 23 side by side, 36 in two rows with ten places to spare: no shorter without the discs. */
  @Test
  void withoutDiscsTheyTakeNoLess() {
    assertEquals(505.5, tried(0, 3).ownColumn(), 1e-9);
    assertEquals(505.5, tried(0, 3).ownColumns(), 1e-9);
  }

  /** (755.403930 − 1.25) ÷ (longest − 1.25), rounded up: 2.52, 2.9986, 3.0002 and 7.06. */
  @ParameterizedTest
  @CsvSource({"300,3", "252.75,3", "252.62,4", "108,8", "2000,1"})
  void noStripIsLongerThanTheLongestThatIsCut(double longest, int fewest) {
    OwnStrips own = OwnStrips.of(new Fabric(53, 1, 4.5), pieces(12, 12, longest), JOIN);
    assertEquals(fewest, own.fewest());
    assertEquals(20, own.ownTries().size());
    assertEquals(tried(12, fewest), own.ownTries().get(0));
  }

  /**
   * Three cushions of 27 from strips 4 wide on 10, seams of 1, none longer than 30, sold by the
   * inch. Whole, two lie side by side and the third behind one: 54. In two each is 14 long, six of
   * them in three rows, 42. In three (27 + 2) ÷ 3 = 9 2/3, marked as 9 3/4: nine in five rows, 48
   * 3/4, 49 as sold. In four 7 1/2: twelve in six rows, 45, and with every further join more is
   * lost.
   */
  @Test
  void theLengthThatTakesLeastFabricIsCut() {
    OwnStrips own = ofThree();
    assertEquals(54, own.ownTries().get(0).ownCost(), 1e-9);
    assertEquals(42, own.ownTries().get(1).ownCost(), 1e-9);
    assertEquals(49, own.ownTries().get(2).ownCost(), 1e-9);
    assertEquals(45, own.ownTries().get(3).ownCost(), 1e-9);
    assertEquals(14, own.alike());
  }

  /**
   * Eight strips of 95 5/8 take a step less of fabric than three of 252 3/4. Where a strip with its
   * join costs as much as 3 3/8 of fabric, the 60 that are more are worth 202 1/2.
   */
  @ParameterizedTest
  @CsvSource({"0,95.625", "3.375,252.75"})
  void fewerStripsAreCutWhereTheyCostLess(double worth, double strip) {
    Fabric fabric = new Fabric(53, 1, 4.5);
    assertEquals(strip, OwnStrips.of(fabric, pieces(12, 12, 300, worth), JOIN).alike());
  }

  /** Two cushions of 27 lie side by side, or in two rows of 14: 30 either way, sold by 5. */
  @Test
  void ofEqualsTheFewestStripsAreCut() {
    OwnStrips own = OwnStrips.of(new Fabric(10, 1, 5), ofTwentySevenEach(2), SEAM);
    assertEquals(30, own.ownTries().get(0).ownCost(), 1e-9);
    assertEquals(30, own.ownTries().get(1).ownCost(), 1e-9);
    assertEquals(27, own.alike());
  }

  /** Of 14 and a seam two make 27. */
  @Test
  void everyCushionHasAsManyAlike() {
    Pieces pieces = ofTwentySevenEach(3);
    assertEquals(CushionStrips.alike(2, 14), ofThree().cushion(pieces, SEAM));
  }

  private static OwnStrips ofThree() {
    return OwnStrips.of(new Fabric(10, 1, 1), ofTwentySevenEach(3), SEAM);
  }

  private static Pieces ofTwentySevenEach(int cushions) {
    return new Pieces(4, cushions * 27, cushions, 0, 6, 30, 0, 10, .125, 0);
  }

  /**
   * Against trying every length that any row of strips ends at: b of m strips' width lie behind the
   * discs' length D, the others beside; the least X with (m − b)·⌊X ÷ l⌋ + b·⌊(X − D) ÷ l⌋ enough.
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 5, 8, 12})
  void noLessLengthHoldsTheStripsBesideTheDiscs(int discs) {
    DiscColumns columns = DiscColumns.of(pieces(12, discs, 300), 53);
    for (double strip = 12; strip < 400; strip *= 1.07) {
      for (int wanted = 1; wanted < 100; wanted += 3) {
        assertLeast(columns, columns.one(), strip, wanted);
        assertLeast(columns, columns.most(), strip, wanted);
      }
    }
  }

  private static void assertLeast(
      DiscColumns columns, DiscColumns.Block discs, double strip, int wanted) {
    double least = leastByTrying(discs, strip, wanted);
    assertEquals(least, columns.length(discs, strip, wanted), 1e-9, wanted + " of " + strip);
  }

  private static double leastByTrying(DiscColumns.Block discs, double strip, int wanted) {
    return IntStream.rangeClosed(0, wanted)
        .boxed()
        .flatMapToDouble(n -> DoubleStream.of(n * strip, discs.length() + n * strip))
        .filter(x -> x >= discs.length())
        .filter(x -> held(discs, strip, x) >= wanted)
        .min()
        .orElseThrow();
  }

  private static double held(DiscColumns.Block discs, double strip, double length) {
    double beside = Math.floor(length / strip + 1e-9);
    double behind = Math.floor((length - discs.length()) / strip + 1e-9);
    return (23 - discs.lanes()) * beside + discs.lanes() * behind;
  }

  /** Two of 27 lie side by side on 10; a spare one takes a second row. */
  @Test
  void aSpareStripIsCutToo() {
    Pieces spare = new Pieces(4, 54, 2, 1, 6, 30, 0, 10, .125, 0);
    OwnTry one = OwnTry.of(new Fabric(10, 1, 1), spare, SEAM, DiscColumns.of(spare, 10), 1);
    assertEquals(54, one.ownColumn(), 1e-9);
  }
}
