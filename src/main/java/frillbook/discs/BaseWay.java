package frillbook.discs;

import frillbook.naming.Prefixed;

/**
 * One way to lay bases and backs on their fabric.
 *
 * @param discs bases and what else is cut from a place of their size
 * @param length fabric all lines take, after washing
 */
public record BaseWay(DiscRows discs, @Prefixed("back") BackRows backs, double length) {}
