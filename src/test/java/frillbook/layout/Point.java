package frillbook.layout;

/**
 * A place on the fabric.
 *
 * @param x along the selvage, from the end of the fabric that is laid out first
 * @param y across the fabric, from one edge of its usable width
 */
public record Point(double x, double y) {}
