package frillbook.picture;

/** A point of the base's edge, seen from above. */
public record EdgePoint(double flowerEdgeX, double flowerEdgeY) {}
