package frillbook.picture;

/** A place in a picture. */
public record Spot(double x, double y) {}
