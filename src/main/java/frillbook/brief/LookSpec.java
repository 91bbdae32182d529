package frillbook.brief;

/**
 * How full a cushion looks.
 *
 * @param fullness flat length over stitched length, at least 1
 * @param spacing from ring to ring
 */
public record LookSpec(double fullness, double spacing) {}
