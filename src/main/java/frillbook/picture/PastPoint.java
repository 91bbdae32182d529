package frillbook.picture;

import frillbook.bias.PastDisc;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A point of the line along the ends of the strips past a line of discs: from the short edge along
 * the cut line that touches the first disc, across the end of every strip, and along the last cut
 * line to the long edge. All lie in the near corner where there are no such strips.
 *
 * @param pastStack across, towards the discs, in the unit of the brief
 * @param pastRun along the longer side
 * @param pastX along the selvage; 1 is the height of the picture
 * @param pastY across the fabric
 */
public record PastPoint(double pastStack, double pastRun, double pastX, double pastY) {
  /** Two ends of every strip, and one at either edge. */
  private static final int MOST = 2 * PastDisc.MOST + 2;

  static List<PastPoint> all(CutFabric fabric, int strips) {
    return IntStream.rangeClosed(1, MOST).mapToObj(n -> at(n, fabric, strips)).toList();
  }

  private static PastPoint at(int number, CutFabric fabric, int strips) {
    if (strips == 0) {
      return new PastPoint(0, 0, 0, 0);
    }
    double stack = stack(number, fabric, strips);
    int line = Math.min(strips, (number - 1) / 2);
    double mark = fabric.bias().lineFirst() + line * fabric.lineStep();
    double run = Math.max(0, Math.min(fabric.bias().longer(), mark - stack));
    boolean turned = fabric.turn() > 0;
    double x = turned ? stack : run;
    double y = turned ? fabric.width() - run : stack;
    return new PastPoint(
        stack, run, Rounding.drawn(x / fabric.scale()), Rounding.drawn(y / fabric.scale()));
  }

  private static double stack(int number, CutFabric fabric, int strips) {
    if (number == 1) {
      return fabric.bias().lineFirst();
    }
    boolean over = number > 2 * strips + 1;
    double takes = over ? 0 : fabric.layouts().past().get(number / 2 - 1).pastTakes();
    boolean outer = !over && number % 2 == 1;
    double further = outer ? fabric.layouts().biasSetting().squareEnds() : 0;
    return fabric.bias().shorter() - takes + further;
  }
}
