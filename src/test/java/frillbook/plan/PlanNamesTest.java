package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.WorkedOrders;
import frillbook.naming.NamedValues;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Names by which other tools read a plan, and what stands under them: the figures of {@link
 * WashedBiasOrderTest}, {@link PricedBiasOrderTest} and {@link PricedBiasChoicesTest}.
 */
class PlanNamesTest {
  private NamedValues bias;

  @BeforeEach
  void planTheOrder() {
    bias = named(WorkedOrders.pricedBias());
  }

  private static NamedValues named(Briefs briefs) {
    return NamedValues.of(Plan.of(briefs.brief()));
  }

  @ParameterizedTest
  @CsvSource({
    "fill_weight, 292.445808",
    "thread_length, 430.545847",
    "hours_total, 13.904654",
    "cost_total, 320.11",
    "price_each, 166.80",
    "price_total, 500.40",
    "lowest_price, 128.05",
    "finished_weight, 233.143555",
    "frill_used_length, 188.388667",
    "two_order_flat, 5668.506654",
    "two_used_length, 250.806069",
    "two_buy_length, 400",
    "three_order_flat, 3028.029176",
    "three_used_length, 163.488692",
    "three_buy_length, 300"
  })
  void aLineHasItsFigure(String name, double figure) {
    assertEquals(figure, (Double) bias.lines().get(name), 5e-6, name);
  }

  @ParameterizedTest
  @CsvSource({
    "seam_thread, 6, 22.650027", // tacking, 18.875022 × 1.2
    "material_charged, 1, 25.12",
    "task_minutes, 3, 44.5",
    "choice_price_total, 3, 451.80"
  })
  void aRowOfATableHasItsFigure(String name, int row, double figure) {
    assertEquals(figure, (Double) bias.columns().get(name).get(row - 1), 6e-7, name);
  }

  /** 44 in wide, no matching disc: each length is tried with one line that holds none. */
  @Test
  void theLengthsTriedForALookHaveTheirColumns() {
    NamedValues across = named(WorkedOrders.ringsAcross());
    assertEquals(44.0, across.columns().get("two_straight_run").get(0));
    assertEquals(1.0, across.columns().get("two_straight_abreast_per_line").get(0));
    Object tried = across.columns().get("three_straight_tried").get(0);
    assertEquals(4.5 * (Double) tried, across.columns().get("three_straight_stack").get(0));
  }
}
