package frillbook.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.MoneySpec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten at 1,078 yen each and 8 %: by piece 86 and 860, once on the order 862, as one rounding for
 * each rate and invoice asks (National Tax Agency Q&A on the qualified invoice, seen through a
 * secondary page).
 */
class TaxTest {
  private static Price price(String rounding) {
    MoneySpec spec =
        Briefs.inch()
            .with("own_price", 1078)
            .with("tax_rate", .08)
            .with("tax_rounding", rounding)
            .with("deposit_rate", .5)
            .brief()
            .money();
    return Price.of(new Money(0), spec, 9000, 10);
  }

  @ParameterizedTest
  @CsvSource({"each, 860, 11640", "order, 862, 11642"})
  void theTaxOfAnOrderIsRoundedByPieceOrOnce(String rounding, double tax, double total) {
    assertEquals(tax, price(rounding).taxTotal());
    assertEquals(total, price(rounding).priceTotal());
  }

  /** 86.24 to the whole yen. */
  @ParameterizedTest
  @CsvSource({"each", "order"})
  void oneCushionIsShownWithItsOwnTax(String rounding) {
    assertEquals(86, price(rounding).taxEach());
    assertEquals(1164, price(rounding).priceEach());
  }

  /** Half of 11,642. */
  @ParameterizedTest
  @CsvSource({"each, 5820", "order, 5821"})
  void theDepositIsAShareOfWhatIsPaid(String rounding, double deposit) {
    assertEquals(deposit, price(rounding).deposit());
  }
}
