package frillbook.layout;

/** A disc in its place. */
public record PlacedDisc(Point centre, double diameter) {}
