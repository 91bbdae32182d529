package frillbook.layout;

/**
 * A rectangle in its place, its sides parallel to those of the fabric.
 *
 * @param corner the corner nearest to where places are measured from
 * @param length along the selvage
 * @param width across the fabric
 */
public record PlacedRectangle(Point corner, double length, double width) {}
