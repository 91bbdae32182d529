package frillbook.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.strip.Join;
import java.util.List;
import org.junit.jupiter.api.Test;

class LengthFoundTest {
  private record Tried(int tried, int kept) implements Trial {}

  private record Found(LengthFound length) implements GrainPlan {
    @Override
    public double stripLength() {
      return 0;
    }

    @Override
    public StripsCut cut() {
      throw new UnsupportedOperationException();
    }
  }

  private static final Tried SHORTEST = new Tried(12, 11);

  /** Of 40 in of width after washing, which takes a fifth of the length; 2 in are straightened. */
  private final LengthFound length =
      LengthFound.of(
          new Fabric(40, .8, 4.5, 2),
          new Pieces(2, 720, 0, 12, 0, 10, .125),
          new Join(false, 1, 1),
          List.of(new Tried(8, 8), SHORTEST, new Tried(10, 10)),
          SHORTEST);

  /**
   * By hand: 12 steps of 4 1/2 are 54, of which 43.2 less 2 are left. The area takes 45 (see {@link
   * FabricTest}), and 54 ÷ 45 = 1.2.
   */
  @Test
  void theShortestLengthIsComparedWithWhatNoPlanCanDoWithout() {
    assertEquals(12, length.steps());
    assertEquals(54, length.buyLength());
    assertEquals(45, length.lowerBound());
    assertEquals(1.2, length.ratio(), 1e-12);
    assertEquals(2, length.row());
    assertEquals(41.2, length.usableLength(), 1e-12);
  }

  @Test
  void thePlanOfAGrainTellsItsLength() {
    assertEquals(54, new Found(length).buyLength());
    assertEquals(41.2, new Found(length).usableLength(), 1e-12);
  }
}
