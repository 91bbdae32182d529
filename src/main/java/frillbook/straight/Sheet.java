package frillbook.straight;

/**
 * A rectangle of fabric seen by straight strips.
 *
 * @param run its extent along the strips
 * @param stack its extent across them
 */
public record Sheet(double run, double stack) {}
