package frillbook.picture;

/** A point of the free edge of the outermost frill, seen from above. */
public record RimPoint(double flowerRimX, double flowerRimY) {}
