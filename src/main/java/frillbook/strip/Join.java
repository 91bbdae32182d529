package frillbook.strip;

import frillbook.brief.Grain;
import frillbook.brief.JoinLine;

/**
 * What strips of one grain give to the run.
 *
 * @param diagonal whether the seam runs at 45° to the strip
 * @param loss length lost where two strips meet
 * @param gain joined length over cut length, above 1 for bias strips that stretch
 */
public record Join(boolean diagonal, double loss, double gain) {

  /**
   * The join of strips of {@code grain}.
   *
   * <p>A square seam takes {@code seamLoss}. A diagonal one takes √2 times that along the strip; on
   * a straight strip, whose ends are square, the mitre takes the strip's width besides.
   */
  public static Join of(
      Grain grain, JoinLine line, double seamLoss, double stripWidth, double biasStretch) {
    boolean diagonal = line.isDiagonal(grain);
    double mitre = grain == Grain.BIAS ? 0 : stripWidth;
    double loss = diagonal ? Math.sqrt(2) * seamLoss + mitre : seamLoss;
    return new Join(diagonal, loss, grain == Grain.BIAS ? 1 + biasStretch : 1);
  }

  /** What a strip cut {@code length} long adds to the run. */
  public double net(double length) {
    return length * gain - loss;
  }

  /** The shortest strip worth cutting: half of it at least must be left after joining. */
  public double shortestUseful(double shortestPiece) {
    return Math.max(shortestPiece, 2 * loss);
  }
}
