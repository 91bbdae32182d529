package frillbook.straight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Grain;
import frillbook.cutting.CushionStrips;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A sheet 50 in along the strips and 30 across them; strips 2 wide for a run of 500, seams of 1;
 * three discs of 10, two to a line; worked by hand.
 *
 * <p>Two lines of discs take 20 of the 30, so five full strips lie before them. Five lanes run past
 * the whole line: its last centre lies at 15, which leaves 35, less half chords of 4, √24, 5, √24
 * and 4. Five run past the last line, whose one centre at 5 leaves 45.
 */
class CombTest {
  private static final Join JOIN = new Join(false, 1, 1);

  /** One strip is joined, so that these do not matter. */
  private static final CushionStrips ONE = new CushionStrips(1, 12, 1);

  private static final double ROOT24 = Math.sqrt(24);

  private static Pieces pieces(int discs, double shortest) {
    return new Pieces(2, 500, 0, shortest, discs, 10, .125);
  }

  private static Comb comb(Sheet sheet, Pieces pieces, int perLine) {
    return Comb.of(cutting(pieces), sheet, Spread.LINES, perLine);
  }

  /** Crosswise, where a strip is as long as the sheet. */
  private static StraightCutting cutting(Pieces pieces) {
    return StraightCutting.of(Grain.CROSSWISE, new Fabric(50, 1, 1), pieces, JOIN);
  }

  private static Lanes lanes(double shortest) {
    return new Lanes(new Sheet(50, 30), pieces(3, shortest), JOIN, Spread.LINES, ONE, 50, 2, 2, 5);
  }

  private static double piece(int lane, double shortest) {
    List<Lane> all = Lane.beside(pieces(3, shortest), 30);
    return lanes(shortest).strip(all.get(lane - 1), all).piece();
  }

  @Test
  void fullStripsLieBeforeTheLinesAndLanesBesideThem() {
    Comb comb = comb(new Sheet(50, 30), pieces(3, 12), 2);
    assertEquals(2, comb.perLine());
    assertEquals(2, comb.lines());
    assertEquals(5, comb.full());
    assertEquals(10, comb.laneCount());
    assertEquals(5, comb.whole());
  }

  /** 5 × 35 − 23 − 2√24 less five seams, and the same from 45. */
  @Test
  void everyLaneAddsWhatTheDiscsLeaveOfIt() {
    Comb comb = comb(new Sheet(50, 30), pieces(3, 12), 2);
    double chords = 4 + ROOT24 + 5 + ROOT24 + 4;
    assertEquals(5 * 35 - chords - 5, comb.besideLines(), 1e-8);
    assertEquals(5 * 45 - chords - 5, comb.besideLast(), 1e-8);
  }

  /** 5 full strips add 49 each, the lanes 344.404082; the run needs 499. */
  @Test
  void whatIsOverIsWhatAllStripsAddLessTheNeed() {
    Comb comb = comb(new Sheet(50, 30), pieces(3, 12), 2);
    assertEquals(245 + 344.404082 - 499, comb.over(), 1e-6);
  }

  @Test
  void theStripOfALaneIsWhatTheDiscsLeave() {
    assertEquals(31, piece(1, 12), 1e-9);
    assertEquals(35 - ROOT24, piece(2, 12), 1e-9);
    assertEquals(31, piece(5, 12), 1e-9);
    assertEquals(41, piece(6, 12), 1e-9);
    assertEquals(41, piece(10, 12), 1e-9);
  }

  @Test
  void beyondTheFabricThereIsNoLane() {
    assertEquals(0, piece(11, 12));
  }

  /** The outer two of the whole line are 31, the inner ones shorter; 31.000001 counts as 31. */
  @ParameterizedTest
  @CsvSource({"31,31", "31.0000005,31", "31.00001,0"})
  void aLaneTooShortToJoinGivesNothing(double shortest, double strip) {
    assertEquals(strip, piece(1, shortest), 1e-9);
    assertEquals(0, piece(2, shortest));
    double net = strip == 0 ? 0 : 2 * (strip - 1);
    assertEquals(net, comb(new Sheet(50, 30), pieces(3, shortest), 2).besideLines(), 1e-9);
  }

  /** A mitre of 16 makes strips under 32 useless: half of them at least must be left. */
  @Test
  void aLaneTooShortForItsSeamsGivesNothing() {
    Join mitred = new Join(true, 16, 1);
    Lanes lanes =
        new Lanes(new Sheet(50, 30), pieces(3, 12), mitred, Spread.LINES, ONE, 50, 2, 2, 5);
    assertEquals(0, lanes.strip(new Lane(1, 1, 3, 4, 0), List.of()).piece());
    assertEquals(41, lanes.strip(new Lane(6, 2, 3, 4, 0), List.of()).piece(), 1e-9);
  }

  /** Five discs of 10 fill a line of 50 and leave 20 of the width, ten full strips. */
  @Test
  void discsMayFillALineToTheEdge() {
    Comb comb = comb(new Sheet(50, 30), pieces(5, 12), 5);
    assertEquals(10 * 49 - 499, comb.over(), 1e-9);
  }

  /** Three lines of one disc fill the stack of 30: fifteen lanes 45 long less their chords. */
  @Test
  void linesMayFillTheFabricToTheEdge() {
    Comb comb = comb(new Sheet(50, 30), pieces(3, 12), 1);
    assertEquals(0, comb.full());
    assertEquals(10, comb.whole());
    assertEquals(15 * 45 - 3 * (13 + 2 * ROOT24) - 15 - 499, comb.over(), 1e-8);
  }

  @ParameterizedTest
  @CsvSource({"49.9,30,5,5", "50,29.9,3,1"})
  void whereDiscsDoNotFitNothingIsOffered(double run, double stack, int discs, int perLine) {
    assertEquals(-499, comb(new Sheet(run, stack), pieces(discs, 12), perLine).over());
  }

  /** A hair of a millionth is allowed. */
  @ParameterizedTest
  @CsvSource({"49.9999995,30,5,5", "50,29.9999995,3,1"})
  void discsThatMissByAHairFit(double run, double stack, int discs, int perLine) {
    double over = comb(new Sheet(run, stack), pieces(discs, 12), perLine).over();
    assertTrue(over > -499, () -> "over " + over);
  }

  /** Fifteen strips just 12 long add 11 each; discs of 10 that are not cut need no room. */
  @Test
  void stripsMustBeWorthJoining() {
    assertEquals(15 * 11 - 499, comb(new Sheet(12, 30), pieces(0, 12), 1).over(), 1e-9);
    assertEquals(-499, comb(new Sheet(11.9, 30), pieces(0, 12), 1).over());
    assertEquals(4 * 11 - 499, comb(new Sheet(12, 9), pieces(0, 12), 1).over(), 1e-9);
  }
}
