package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec.Sort;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cushion from the side, flat and filled; 1 is half the diameter and one frill height.
 *
 * @param sideScale diameter and twice the frill height
 * @param sideWide half of the filled diameter, in the picture
 * @param sideThick half of the filled thickness, between thinnest and thickest
 * @param sideFlat half of the diameter laid flat
 * @param sideFrill frill height
 * @param sideBend power of cosine and sine: 1 makes an ellipse, 1/2 the blunter edge of a disc
 * @param sideStep radians from point to point of the outline
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
    double sideBend,
    double sideStep,
    List<SidePoint> sides,
    List<SideFlatPoint> sideFlats,
    List<SideFrillPoint> sideFrills) {
  private static final int STEPS = 12;

  private static final double STEP = Math.PI / 2 / STEPS;

  /** Half as thick as the line that stands for a cushion laid flat. */
  private static final double FLAT = .01;

  public record SidePoint(double sideX, double sideZ) {}

  public record SideFlatPoint(double sideFlatX, double sideFlatZ) {}

  public record SideFrillPoint(double sideFrillX, double sideFrillZ) {}

  public static Side of(Brief brief, Filling filling) {
    double scale = brief.cushion().diameter() + 2 * brief.frill().frillHeight();
    double wide = filling.shape().filledDiameter() / scale;
    double thick = filling.shape().meanThickness() / scale;
    double flat = brief.cushion().diameter() / scale;
    double frill = 2 * brief.frill().frillHeight() / scale;
    double bend = brief.fill().filling() == Sort.FOAM_DISC ? .5 : 1;
    List<SidePoint> outline = outline(wide, thick, bend);
    return new Side(
        scale, wide, thick, flat, frill, bend, STEP, outline, flat(flat), frill(outline, frill));
  }

  private static List<SidePoint> outline(double wide, double thick, double bend) {
    return IntStream.rangeClosed(0, 4 * STEPS)
        .mapToObj(
            i ->
                new SidePoint(
                    Rounding.drawn(wide * bent(Math.cos(STEP * i), bend)),
                    Rounding.drawn(thick * bent(Math.sin(STEP * i), bend))))
        .toList();
  }

  private static double bent(double share, double bend) {
    return Math.copySign(Math.pow(Math.abs(share), bend), share);
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
