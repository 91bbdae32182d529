package frillbook.agreement;

import frillbook.calculation.WorkbookValues;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Money is rounded to the coin as by hand; other programs are asked in their own tests. */
final class CoinsTest {
  static List<CoinBrief> coins() {
    return CoinBrief.all();
  }

  @ParameterizedTest
  @MethodSource("coins")
  void theEngineRoundsAsByHand(CoinBrief coins) {
    coins.requireInTheEngine();
  }

  @Test
  void apachePoiKnowsEveryCurrencyWithItsPlaces() {
    CurrencySheet sheet = CurrencySheet.of();
    WorkbookValues values = new WorkbookValues(sheet.workbook());
    values.recalculate();
    sheet.requireIn(SheetValues.of(sheet.workbook(), values));
  }

  @ParameterizedTest
  @MethodSource("coins")
  void apachePoiRoundsAsByHand(CoinBrief coins) {
    coins.requireIn(Trials.given(coins.brief()));
  }
}
