package frillbook.brief;

/**
 * How long a task takes this maker.
 *
 * @param rate minutes for one of what drives the task: a strip, a metre, a ring
 * @param setup minutes spent once, however many are made
 */
public record TaskSpec(double rate, double setup) {}
