package frillbook.money;

/**
 * What of an order's cost grows with how the cushion looks; the rest stays.
 *
 * @param stripCost with the flat length: frill fabric but for matching discs, thread, wages
 * @param rowCost with the rows alone: wages
 */
public record LookCosts(double stripCost, double rowCost) {}
