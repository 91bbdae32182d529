package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cushion from the side, flat and filled; 1 is half the diameter and one frill height.
 *
 * @param sideScale diameter and twice the frill height
 * @param sideWide half of the filled diameter, in the picture
 * @param sideThick half of the filled thickness
 * @param sideFlat half of the diameter laid flat
 * @param sideFrill frill height
 * @param balloonStep radians from point to point of the outline
 * @param balloonDepth height of a balloon of radius 1, by the mid-point rule
 * @param balloons quarter of its outline, from the middle to the edge
 * @param sides the filled outline, once round from the right
 * @param sideFlats the cushion laid flat
 * @param sideFrills the free edge of the frill, from the right
 */
public record Side(
    double sideScale,
    double sideWide,
    double sideThick,
    double sideFlat,
    double sideFrill,
    double balloonStep,
    double balloonDepth,
    List<BalloonPoint> balloons,
    List<SidePoint> sides,
    List<SideFlatPoint> sideFlats,
    List<SideFrillPoint> sideFrills) {
  private static final int STEPS = 12;

  private static final double STEP = Math.PI / 2 / STEPS;

  /** Half as thick as the line that stands for a cushion laid flat. */
  private static final double FLAT = .01;

  /**
   * A step along the outline x = sin θ of a balloon of radius 1, whose height falls by sin²θ/√(1 +
   * sin²θ) dθ.
   *
   * @param balloonSine sin θ half a step before
   * @param balloonDrop height lost since the middle
   * @param balloonRise height that is left, in the picture
   */
  public record BalloonPoint(
      double balloonAngle, double balloonSine, double balloonDrop, double balloonRise) {}

  public record SidePoint(double sideX, double sideZ) {}

  public record SideFlatPoint(double sideFlatX, double sideFlatZ) {}

  public record SideFrillPoint(double sideFrillX, double sideFrillZ) {}

  public static Side of(Brief brief, Filling filling) {
    double scale = brief.cushion().diameter() + 2 * brief.frill().frillHeight();
    double wide = filling.filledDiameter() / scale;
    double thick = filling.filledThickness() / scale;
    double flat = brief.cushion().diameter() / scale;
    double frill = 2 * brief.frill().frillHeight() / scale;
    double[] drops = drops();
    List<BalloonPoint> balloon = balloon(drops, thick);
    List<SidePoint> outline = outline(balloon, wide);
    return new Side(
        scale,
        wide,
        thick,
        flat,
        frill,
        STEP,
        drops[STEPS],
        balloon,
        outline,
        flat(flat),
        frill(outline, frill));
  }

  private static double[] drops() {
    double[] drops = new double[STEPS + 1];
    for (int i = 1; i <= STEPS; i++) {
      double sine = sine(i);
      drops[i] = drops[i - 1] + STEP * sine * sine / Math.sqrt(1 + sine * sine);
    }
    return drops;
  }

  private static double sine(int step) {
    return Math.sin(STEP * (step - .5));
  }

  private static List<BalloonPoint> balloon(double[] drops, double thick) {
    return IntStream.rangeClosed(0, STEPS)
        .mapToObj(
            i ->
                new BalloonPoint(
                    STEP * i, sine(i), drops[i], thick * (1 - drops[i] / drops[STEPS])))
        .toList();
  }

  private static List<SidePoint> outline(List<BalloonPoint> balloon, double wide) {
    return IntStream.rangeClosed(0, 4 * STEPS)
        .mapToObj(
            i -> {
              double rise = balloon.get(Math.abs(STEPS - i % (2 * STEPS))).balloonRise();
              return new SidePoint(
                  Rounding.drawn(wide * Math.cos(STEP * i)),
                  Rounding.drawn(i <= 2 * STEPS ? rise : -rise));
            })
        .toList();
  }

  private static List<SideFlatPoint> flat(double wide) {
    double right = Rounding.drawn(wide);
    double left = Rounding.drawn(-wide);
    return List.of(
        new SideFlatPoint(right, FLAT),
        new SideFlatPoint(left, FLAT),
        new SideFlatPoint(left, -FLAT),
        new SideFlatPoint(right, -FLAT),
        new SideFlatPoint(right, FLAT));
  }

  /** Tips and hollows in turn, so that the edge reads as fabric. */
  private static List<SideFrillPoint> frill(List<SidePoint> outline, double high) {
    return IntStream.rangeClosed(0, 2 * STEPS)
        .mapToObj(
            i -> {
              double share = i % (2 * STEPS) == 0 ? 0 : i % 2 == 0 ? .8 : 1;
              SidePoint on = outline.get(i);
              return new SideFrillPoint(on.sideX(), Rounding.drawn(on.sideZ() + high * share));
            })
        .toList();
  }
}
