package frillbook.layout;

/**
 * A place on the cloth.
 *
 * @param x along the selvage, from the end of the cloth that is laid out first
 * @param y across the cloth, from one edge of its usable width
 */
public record Point(double x, double y) {}
