package frillbook.brief;

import frillbook.measure.Currencies;
import frillbook.naming.Coded;
import java.util.Optional;

/**
 * What the maker wants to be paid, and in which money.
 *
 * @param currencyCode of every amount of money (ISO 4217), one of {@link Currencies}
 * @param hourlyRate wage for an hour
 * @param overheadRate share of materials and labour that covers rent, tools, light
 * @param profitBasis what the profit rate is a share of
 * @param profitRate 0.4 is 40 %; as a margin at most 0.95
 * @param taxRate added to the price
 * @param taxRounding what the tax is rounded on
 * @param tradeClient whether the client is shown prices before tax
 * @param own price of the maker's own; empty for the one worked out
 * @param farOff times by which sums that belong together may differ before one looks mistyped
 * @param tidyStep the price before tax is rounded up to a whole number of these; 0 for none
 * @param depositRate share of the price asked for beforehand
 * @param offerEach what a client offers for one cushion, tax included; 0 for no offer
 * @param cheaperShare share of the price by which another grain must be cheaper to be told
 */
public record MoneySpec(
    String currencyCode,
    double hourlyRate,
    double overheadRate,
    ProfitBasis profitBasis,
    double profitRate,
    double taxRate,
    TaxRounding taxRounding,
    YesNo tradeClient,
    Optional<Own> own,
    double farOff,
    double tidyStep,
    double depositRate,
    double offerEach,
    double cheaperShare) {

  /** What the tax is rounded on. */
  public enum TaxRounding implements Coded {
    EACH,
    ORDER
  }

  /**
   * @param ownPrice for one cushion before tax
   */
  public record Own(double ownPrice) {}

  /** How many of {@code quantity} cushions are taxed as one sum. */
  public int taxedTogether(int quantity) {
    return taxRounding == TaxRounding.ORDER ? quantity : 1;
  }
}
