package frillbook.straight;

/**
 * A rectangle of cloth seen by straight strips.
 *
 * @param run its extent along the strips
 * @param stack its extent across them
 */
public record Sheet(double run, double stack) {}
