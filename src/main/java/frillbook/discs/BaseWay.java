package frillbook.discs;

/**
 * One way to lay bases and backs on their fabric.
 *
 * @param discs bases and what else is cut from a place of their size
 * @param length fabric all lines take, after washing
 */
record BaseWay(DiscRows discs, BackRows backs, double length) {}
