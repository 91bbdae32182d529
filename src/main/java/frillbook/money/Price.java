package frillbook.money;

import frillbook.brief.MoneySpec;
import frillbook.brief.ProfitBasis;

/**
 * What the client pays. Every total is the sum of the rounded amounts it is shown with.
 *
 * @param wantedNet for all cushions before tax, not rounded
 * @param netEach before tax, rounded up to the tidy step
 * @param taxEach rounded half up
 * @param priceEach with tax
 * @param netTotal for all cushions before tax
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
    double netEach,
    double taxEach,
    double priceEach,
    double netTotal,
    double taxTotal,
    double priceTotal,
    double profitTotal,
    double markupReached,
    double marginReached,
    double deposit,
    double balance) {

  /** The price of {@code quantity} cushions that together cost {@code cost}. */
  public static Price of(Money money, MoneySpec spec, double cost, int quantity) {
    double wanted = wanted(spec, cost);
    double net = money.tidy(spec.tidyStep(), wanted / quantity);
    double tax = money.round(net * spec.taxRate());
    double price = money.sum(net, tax);
    double netTotal = money.sum(net * quantity);
    double priceTotal = money.sum(price * quantity);
    double profit = money.sum(netTotal, -cost);
    double deposit = money.round(priceTotal * spec.depositRate());
    return new Price(
        wanted,
        net,
        tax,
        price,
        netTotal,
        money.sum(tax * quantity),
        priceTotal,
        profit,
        cost > 0 ? profit / cost : 0,
        netTotal > 0 ? profit / netTotal : 0,
        deposit,
        money.sum(priceTotal, -deposit));
  }

  private static double wanted(MoneySpec spec, double cost) {
    return spec.profitBasis() == ProfitBasis.MARKUP
        ? cost * (1 + spec.profitRate())
        : cost / (1 - spec.profitRate());
  }
}
