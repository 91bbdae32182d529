package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.template.InputTemplate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An order that costs nothing but three things bought besides, so that what is rounded is known
 * beforehand.
 *
 * @param expected lines by name, from outside the code
 * @param charged for the three things, to the coin
 */
record CoinBrief(TrialBrief brief, Map<String, Double> expected, List<Double> charged) {
  private static final double CLOSE = 1e-9;

  /** Of the sheet Shopping, the last three lines. */
  private static final int THINGS_FROM = 6;

  private static final TrialBrief DOLLARS = Trials.PRESETS.get(0);
  private static final TrialBrief DINARS = Trials.PRESETS.get(2);
  private static final TrialBrief YEN = Trials.PRESETS.get(3);

  /**
   * Halves and the parts of a coin by hand; 1.005, 2.675 and 0.285 are less than they seem in
   * binary (IEEE 754), and 0.07 × 100 is more.
   */
  static List<CoinBrief> all() {
    return List.of(
        things(DOLLARS, 1.005, 2.675, 0.285).giving(1.01, 2.68, 0.29).and("net_each", 3.98),
        things(DINARS, 1.005, 2.675, 0.285).giving(1.005, 2.675, 0.285).and("net_each", 3.965),
        things(DINARS, 1.0005, 0.0285, 0.07).giving(1.001, 0.029, 0.07).and("net_each", 1.1),
        things(YEN, 1.005, 2.675, 0.285).giving(1, 3, 0).and("net_each", 4),
        things(YEN, 0.5, 2.5, 0.07).giving(1, 3, 0).and("net_each", 4),
        things(DOLLARS, 0.07, 0, 0).giving(0.07, 0, 0).and("net_each", 0.07).and("profit_total", 0),
        forMany(things(DOLLARS, 0.21, 0, 0), 3).giving(0.21, 0, 0).and("net_each", 0.07),
        forMany(things(DOLLARS, 0.22, 0, 0), 3).giving(0.22, 0, 0).and("net_each", 0.08),
        taxed(DOLLARS, 12.34, 0.1).and("tax_each", 1.23),
        taxed(DOLLARS, 12.35, 0.1).and("tax_each", 1.24),
        taxed(DOLLARS, 68.49, 0.01).and("tax_each", 0.68),
        tenForTaxedYen(),
        tenForYenTaxedOnce());
  }

  /** The same tax rounded once on the order: 862. */
  private static CoinBrief tenForYenTaxedOnce() {
    CoinBrief ten = forMany(taxed(YEN, 10_780, 0.08), 10);
    return new CoinBrief(ten.brief.with("tax_rounding", "order"), ten.expected, ten.charged)
        .and("tax_total", 862)
        .and("price_total", 11_642);
  }

  /**
   * 1,078 yen each at 8 %: by piece 86, for ten 860 (National Tax Agency Q&A, through a secondary
   * page).
   */
  private static CoinBrief tenForTaxedYen() {
    return forMany(taxed(YEN, 10_780, 0.08), 10).and("tax_each", 86).and("tax_total", 860);
  }

  /**
   * Tax on one thing. Streamlined Sales and Use Tax Agreement §324: to the third decimal, up when
   * that is over four: 1.234 is 1.23, 1.235 is 1.24, .6849 is .68.
   */
  private static CoinBrief taxed(TrialBrief preset, double price, double rate) {
    CoinBrief one = things(preset, price, 0, 0).giving(price, 0, 0);
    return new CoinBrief(one.brief.with("tax_rate", rate), one.expected, one.charged);
  }

  private static CoinBrief things(TrialBrief preset, double one, double two, double three) {
    TrialBrief brief =
        free(preset)
            .with("extra_one_needed", 1.0)
            .with("extra_two_needed", 1.0)
            .with("extra_three_needed", 1.0)
            .with("price_extra_one", one)
            .with("price_extra_two", two)
            .with("price_extra_three", three);
    return new CoinBrief(brief.titled("coins"), Map.of(), List.of());
  }

  private static TrialBrief free(TrialBrief preset) {
    TrialBrief brief = preset.with("quantity", 1.0);
    for (InputTemplate input : Trials.TEMPLATE.inputs()) {
      brief = input.name().startsWith("price_") ? brief.with(input.name(), 0.0) : brief;
    }
    return brief
        .with("hourly_rate", 0.0)
        .with("overhead_rate", 0.0)
        .with("profit_rate", 0.0)
        .with("tax_rate", 0.0)
        .with("tidy_step", 0.0);
  }

  private static CoinBrief forMany(CoinBrief one, double quantity) {
    return new CoinBrief(one.brief.with("quantity", quantity), one.expected, one.charged);
  }

  private CoinBrief giving(double one, double two, double three) {
    return new CoinBrief(brief, expected, List.of(one, two, three));
  }

  private CoinBrief and(String line, double value) {
    Map<String, Double> more = new TreeMap<>(expected);
    more.put(line, value);
    return new CoinBrief(brief, more, charged);
  }

  /** What a workbook says is what was known beforehand. */
  void requireIn(SheetValues sheet) {
    requireCharged(sheet.column("material_charged"));
    expected.forEach((line, value) -> require(line, value, sheet.value(line)));
  }

  /** What the engine says is what was known beforehand. */
  void requireInTheEngine() {
    requireCharged(brief.planned().columns().get("material_charged"));
    expected.forEach((line, value) -> require(line, value, brief.planned().lines().get(line)));
  }

  private void requireCharged(List<Object> materials) {
    for (int i = 0; i < charged.size(); i++) {
      require("thing " + (i + 1), charged.get(i), materials.get(THINGS_FROM + i));
    }
    assertEquals(3, charged.size());
  }

  private void require(String what, double value, Object found) {
    assertTrue(found instanceof Double, what + " is " + found + " in " + brief);
    assertEquals(value, (Double) found, CLOSE, () -> what + " in " + brief);
  }
}
