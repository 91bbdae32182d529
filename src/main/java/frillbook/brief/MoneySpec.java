package frillbook.brief;

import frillbook.measure.Currencies;

/**
 * What the maker wants to be paid, and in which money.
 *
 * @param currencyCode of every amount of money (ISO 4217), one of {@link Currencies}
 * @param hourlyRate wage for an hour
 * @param overheadRate share of materials and labour that covers rent, tools, light
 * @param profitBasis what the profit rate is a share of
 * @param profitRate 0.4 is 40 %; as a margin at most 0.95
 * @param taxRate added to the price
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
    double tidyStep,
    double depositRate,
    double offerEach,
    double cheaperShare) {}
