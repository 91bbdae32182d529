package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec.Sort;
import frillbook.fill.Filling;

/**
 * How wide and how high the cushion and its frill are from the side; 1 is half the picture.
 *
 * @param sideScale half the picture, in the unit of the brief
 * @param sideWide half of the filled diameter
 * @param sideThick half of the filled thickness, between thinnest and thickest
 * @param sideSpread half of the width over the frill
 * @param sideRise height of the frill's edge over the edge seam
 * @param sidePower of the shares of width and thickness that add up to 1 on the outline: 2 makes an
 *     ellipse, 4 the blunter edge of a disc
 * @param sideHollow the share of the frill that is missing between two petals
 * @param sideLean what makes the petals of a flat cushion as wide in the middle as at the edges
 */
public record SideShape(
    double sideScale,
    double sideWide,
    double sideThick,
    double sideSpread,
    double sideRise,
    int sidePower,
    double sideHollow,
    double sideLean) {

  static SideShape of(Brief brief, Filling filling) {
    double high = brief.frill().frillHeight();
    double thick = filling.shape().meanThickness() / 2;
    double reach = filling.parcel().overallDiameter() / 2;
    double scale = Math.max(reach, thick + high);
    return new SideShape(
        scale,
        filling.shape().filledDiameter() / 2 / scale,
        thick / scale,
        reach / scale,
        (thick + high) / scale,
        brief.fill().filling() == Sort.FOAM_DISC ? 4 : 2,
        1 - 1 / brief.frill().fullness(),
        Math.sqrt((thick + high) / reach));
  }

  /** How far out the filled cushion reaches, {@code angle} from straight up. */
  double body(double angle) {
    return outline(angle, sideWide, sideThick);
  }

  /** How far out the tips of the frill reach. */
  double tips(double angle) {
    return outline(angle, sideSpread, sideRise);
  }

  private double outline(double angle, double wide, double high) {
    double across = Math.pow(Math.abs(Math.sin(angle) / wide), sidePower);
    double upwards = Math.pow(Math.abs(Math.cos(angle) / high), sidePower);
    return Math.pow(across + upwards, -1.0 / sidePower);
  }
}
