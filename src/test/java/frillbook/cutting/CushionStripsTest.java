package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.strip.Join;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Four cushions, full strips 50 long, seams of 1, so that a full strip adds 49; no strip under 12;
 * worked by hand.
 */
class CushionStripsTest {
  private static final Join JOIN = new Join(false, 1, 1);

  /** A cushion of 170 takes 169: three full strips, 147, and 22 more, cut 23. */
  private static final CushionStrips STRIPS = CushionStrips.of(pieces(170), JOIN, 50);

  private static Pieces pieces(double cushion) {
    return new Pieces(2, 4 * cushion, 4, 1, 12, Double.MAX_VALUE, 0, 10, .125, 0);
  }

  /**
   * 148 takes 147, three full strips and not a bit more; 148.00001 is a hair more. For 152 the
   * fourth adds 4 and would be 5 long, under 12; for 159 exactly 12. 170.05 leaves 23.05, marked as
   * 23 1/8. The one strip of a cushion of 40 takes no seam.
   */
  @ParameterizedTest
  @CsvSource({
    "148,       3, 50",
    "148.00001, 3, 50",
    "148.1,     4, 12",
    "152,       4, 12",
    "159,       4, 12",
    "159.1,     4, 12.125",
    "170,       4, 23",
    "170.05,    4, 23.125",
    "196.95,    4, 50",
    "40,        1, 40"
  })
  void theLastStripIsAsShortAsItMayBe(double cushion, int each, double last) {
    CushionStrips strips = CushionStrips.of(pieces(cushion), JOIN, 50);
    assertEquals(each, strips.each());
    assertEquals(last, strips.last(), 1e-9);
  }

  /** Seams of 8: 50 adds 42, twice 84 of the 87; the 3 would be cut 11, of which 3 are left. */
  @Test
  void halfOfTheLastStripIsLeftAfterJoining() {
    CushionStrips strips = CushionStrips.of(pieces(95), new Join(true, 8, 1), 50);
    assertEquals(3, strips.each());
    assertEquals(16, strips.last());
  }

  /** Full strips of 10 are too short to join themselves, so nothing as long serves. */
  @Test
  void noLastStripIsShorterThanTheShortestThatIsJoined() {
    assertEquals(12, CushionStrips.of(pieces(170), JOIN, 10).last());
    assertEquals(12, CushionStrips.of(pieces(170), JOIN, -5).last());
  }

  /**
   * A tenth longer when sewn, 50 adds 54; 185 takes 184, three are 162. The 22 and a seam are cut
   * 23 ÷ 1.1 = 20.909, marked as 21.
   */
  @Test
  void aLastStripThatStretchesIsCutShorter() {
    CushionStrips strips = CushionStrips.of(pieces(185), new Join(true, 1, 1.1), 50);
    assertEquals(4, strips.each());
    assertEquals(21, strips.last(), 1e-9);
  }

  /** None of them is cut up into several. */
  @Test
  void stripsAlikeAreAllAsLongAsTheLast() {
    assertEquals(new CushionStrips(4, 50, 1), CushionStrips.alike(4, 50));
  }

  /** 50 holds four of 12, two of 23 and of 25, one of 25 1/8. */
  @ParameterizedTest
  @CsvSource({"152,4", "170,2", "172,2", "172.1,1", "196,1"})
  void aFullStripIsCutUpIntoAsManyLastOnesAsItHolds(double cushion, int inFull) {
    assertEquals(inFull, CushionStrips.of(pieces(cushion), JOIN, 50).inFull());
  }

  /** A last strip is 23; a millionth less is as long. */
  @Test
  void aShorterStripServesIfItIsAsLongAsTheLast() {
    List<OddPiece> odds = OddPiece.sorted(DoubleStream.of(22.99, 40, 23, 22.9999995, 12, 24), JOIN);
    assertEquals(4, STRIPS.serving(odds));
  }

  /** Twelve full strips, and those that two last ones are cut from each, for who is not served. */
  @ParameterizedTest
  @CsvSource({"0,14", "1,14", "2,13", "3,13", "4,12", "5,12"})
  void shorterStripsThatServeSpareFullOnes(int served, int full) {
    assertEquals(full, STRIPS.fullWanted(pieces(170), served));
  }

  /** One strip is spare besides: 15 without shorter ones, 14 with two, 13 with four. */
  @ParameterizedTest
  @CsvSource({"15,0,0", "14,0,-1", "14,2,0", "20,4,7"})
  void whatIsOverIsWhatIsNeitherWantedNorSpare(int full, int shorter, int over) {
    assertEquals(over, STRIPS.over(pieces(170), full, shorter));
  }

  /**
   * Four cushions of four strips have 3 joins each. One last strip serves, three are cut of two.
   */
  @Test
  void everyCushionHasOneJoinLessThanStrips() {
    StripsCut cut = StripsCut.own(pieces(170), STRIPS, 1);
    assertEquals(12, cut.joinCount());
    assertEquals(new Tally(0, 15, 0, 1, 17), cut.all());
    assertEquals(new Tally(0, 15, 0, 1, 16), cut.run());
  }
}
