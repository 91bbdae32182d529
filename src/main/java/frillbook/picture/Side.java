package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The cushion from the side: shapes about its middle that lie over each other.
 *
 * @param sides how far out each reaches, step by step, clockwise from the top
 */
public record Side(SideShape shape, List<SideStep> sides) {
  private static final int STEPS = 80;

  private static final double STEP = 2 * Math.PI / STEPS;

  /** All the way round; the upper half shows half of them. */
  private static final int PETALS = 20;

  private static final int ROWS = 3;

  /**
   * The shapes at one step.
   *
   * @param sideBody the filled cushion
   */
  public record SideStep(double sideBody, @Prefixed("side") @Indexed(ROWS) List<FrillOut> frills) {}

  /**
   * A place on one row of the frill; on the lower half it lies behind the cushion.
   *
   * @param out from the middle
   */
  public record FrillOut(double out) {}

  /**
   * A row of the frill.
   *
   * @param share of the frill's height that is seen of it
   * @param turn −1 where it is turned by half a petal
   */
  private record Frill(double share, int turn) {}

  private static final List<Frill> FRILLS =
      List.of(new Frill(1, 1), new Frill(.75, -1), new Frill(.5, 1));

  public static Side of(Brief brief, Filling filling) {
    SideShape shape = SideShape.of(brief, filling);
    return new Side(shape, IntStream.range(0, STEPS).mapToObj(step -> step(shape, step)).toList());
  }

  private static SideStep step(SideShape shape, int step) {
    double body = Rounding.drawn(shape.body(STEP * step));
    Stream<Double> out = FRILLS.stream().map(frill -> out(frill, shape, step, body));
    return new SideStep(body, out.map(FrillOut::new).toList());
  }

  private static double out(Frill frill, SideShape shape, int step, double body) {
    if (Math.abs(step - STEPS / 2) < STEPS / 4) {
      return body;
    }
    double angle = STEP * step;
    double wave = Math.cos(PETALS * Math.atan(shape.sideLean() * Math.tan(angle)));
    double left = 1 - shape.sideHollow() / 2 * (1 - frill.turn() * wave);
    return Rounding.drawn(body + frill.share() * (shape.tips(angle) - body) * left);
  }
}
