package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.rows.RowSizes;
import java.util.List;

/**
 * The cushion from above.
 *
 * @param flower the sewn rows with their ripples
 * @param flowerRims the free edge of the outermost frill
 * @param flowerEdges the edge of the base
 */
public record Flower(
    FlowerShape shape,
    FlowerRows rows,
    FlowerRim rim,
    List<FlowerPoint> flower,
    List<RimPoint> flowerRims,
    List<EdgePoint> flowerEdges) {
  /** Points of the rows less one. */
  static final int STEPS = 400;

  public static Flower of(Brief brief, RowSizes sizes, int ringCount, double depth) {
    boolean spiral = brief.cushion().rowStyle() == RowStyle.SPIRAL;
    FlowerShape shape = FlowerShape.of(brief, sizes, ringCount, depth);
    FlowerRows rows = FlowerRows.of(shape, spiral);
    FlowerRim rim = FlowerRim.of(shape);
    return new Flower(shape, rows, rim, rows.points(shape, spiral, STEPS), rim.rims(), rim.edges());
  }
}
