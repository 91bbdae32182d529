package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.strip.Join;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Full strips that add 50 each, and shorter ones cut 21, 16 and 16 with seams of 1: they add 20,
 * then 35, then 50 in all.
 */
class TallyTest {
  private static final Join JOIN = new Join(false, 1, 1);

  private static List<OddPiece> odds() {
    return OddPiece.sorted(DoubleStream.of(16, 0, 21, 16), JOIN);
  }

  @Test
  void theLongestOddPiecesComeFirstAndAddUp() {
    List<OddPiece> odds = odds();
    assertEquals(
        List.of(new OddPiece(21, 20), new OddPiece(16, 35), new OddPiece(16, 50)),
        odds.subList(0, 3));
  }

  @Test
  void thereIsRoomForTheMostThatAPlanCanHave() {
    List<OddPiece> odds = odds();
    assertEquals(72, odds.size());
    assertEquals(new OddPiece(0, 50), odds.get(71));
  }

  /** By hand: 150 is three full strips, 150.1 four; of three, the fourth's part is made of odds. */
  @ParameterizedTest
  @CsvSource({
    "150,10,3,0",
    "150.1,10,4,0",
    "150,3,3,0",
    "160,3,3,1",
    "170,3,3,1",
    "170.1,3,3,2",
    "185,3,3,2",
    "200,3,3,3",
    "35,0,0,2"
  })
  void fullStripsAreCutFirstAndThenTheLongestOfTheOthers(
      double need, int offered, int full, int odd) {
    Tally tally = Tally.of(need, offered, 50, odds());
    assertEquals(new Tally(need, full, need - 50 * full, odd, full + odd), tally);
  }

  /** Lengths within a millionth count as equal; so do strips and a quotient within one. */
  @ParameterizedTest
  @CsvSource({"150.0000005,0", "150.00004,0", "150.00006,1", "170.0000005,1", "170.000002,2"})
  void aHairTooShortIsLongEnough(double need, int odd) {
    assertEquals(odd, Tally.of(need, 3, 50, odds()).odd());
  }

  /** By hand: with full strips that add 1/2 in, 0.0000009 over three of them is a hair too. */
  @Test
  void aHairIsAMillionthForShortStripsAlso() {
    assertEquals(0, Tally.of(1.5000009, 3, .5, odds()).odd());
    assertEquals(1, Tally.of(1.5000011, 3, .5, odds()).odd());
  }

  /** By hand: 200 − 1 = 199 is five strips that add 49; two spares are 98 more, 297 is seven. */
  @Test
  void sparesAreCutButNotJoined() {
    Pieces pieces = new Pieces(2, 200, 2, 12, 0, 10, .125);
    StripsCut cut = StripsCut.of(pieces, JOIN, 10, 50, 50, odds());
    assertEquals(new Tally(297, 7, 297 - 343, 0, 7), cut.all());
    assertEquals(new Tally(199, 5, 199 - 245, 0, 5), cut.run());
    assertEquals(4, cut.joinCount());
  }
}
