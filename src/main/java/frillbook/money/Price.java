package frillbook.money;

import frillbook.brief.MoneySpec;

/**
 * What the client pays. Every total is the sum of the rounded amounts it is shown with; tax that is
 * rounded once on the order is not so many times that of one cushion.
 *
 * @param wantedNet for all cushions before tax, not rounded
 * @param priceFactor what is asked before tax over what it costs
 * @param netEach before tax, rounded up to the tidy step, or the maker's own
 * @param taxEach rounded half up
 * @param priceEach with tax
 * @param netTotal for all cushions before tax
 * @param taxedTogether cushions whose tax is rounded as one sum
 * @param taxTotal for all cushions
 * @param priceTotal for all cushions with tax
 * @param profitTotal left of the net total after all costs
 * @param markupReached profit over cost; 0 where nothing costs anything
 * @param marginReached profit over net total; 0 where nothing is charged. A markup of 40 % is a
 *     margin of 28.57 %
 * @param deposit share of the price asked for beforehand
 * @param balance the rest
 */
public record Price(
    double wantedNet,
    double priceFactor,
    double netEach,
    double taxEach,
    double priceEach,
    double netTotal,
    int taxedTogether,
    double taxTotal,
    double priceTotal,
    double profitTotal,
    double markupReached,
    double marginReached,
    double deposit,
    double balance) {

  /** The price of {@code quantity} cushions that together cost {@code cost}, as planned. */
  public static Price of(Money money, MoneySpec spec, double cost, int quantity) {
    return of(new Ask(money, spec, cost, quantity), cost, true);
  }

  /** The same of another order than the plan's, which costs {@code planned}. */
  public static Price beside(
      Money money, MoneySpec spec, double cost, int quantity, double planned) {
    return of(new Ask(money, spec, planned, quantity), cost, false);
  }

  private static Price of(Ask ask, double cost, boolean asPlanned) {
    Money money = ask.money();
    MoneySpec spec = ask.spec();
    int quantity = ask.quantity();
    int together = spec.taxedTogether(quantity);
    double net = ask.each(cost, asPlanned);
    double tax = money.round(net * spec.taxRate());
    double netTotal = money.sum(net * quantity);
    double taxes = money.round(net * together * spec.taxRate()) * quantity / together;
    double priceTotal = money.sum(netTotal, taxes);
    double profit = money.sum(netTotal, -cost);
    double deposit = money.round(priceTotal * spec.depositRate());
    return new Price(
        ask.profitable(cost),
        ask.factor(),
        net,
        tax,
        money.sum(net, tax),
        netTotal,
        together,
        money.sum(taxes),
        priceTotal,
        profit,
        cost > 0 ? profit / cost : 0,
        netTotal > 0 ? profit / netTotal : 0,
        deposit,
        money.sum(priceTotal, -deposit));
  }
}
