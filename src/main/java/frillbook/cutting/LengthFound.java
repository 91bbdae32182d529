package frillbook.cutting;

import frillbook.strip.Join;
import java.util.List;

/**
 * The shortest length of fabric that a search found enough.
 *
 * @param steps buy steps bought
 * @param buyLength the length bought
 * @param lowerBound area of the pieces over usable width, in buy steps rounded up: no plan can do
 *     with less
 * @param ratio bought over lower bound
 * @param row of the trial that found it
 * @param usableLength left of the bought length, washed and its ends straightened
 */
public record LengthFound(
    int steps, double buyLength, double lowerBound, double ratio, int row, double usableLength) {

  /** What {@code found}, one of {@code trials}, comes to. */
  public static LengthFound of(
      Fabric fabric, Pieces pieces, Join join, List<? extends Trial> trials, Trial found) {
    double buy = found.tried() * fabric.buyStep();
    double bound = fabric.lowerBound(pieces, join);
    long before = trials.stream().takeWhile(trial -> trial.tried() != found.tried()).count();
    return new LengthFound(
        found.tried(), buy, bound, buy / bound, (int) before + 1, fabric.usable(buy));
  }
}
