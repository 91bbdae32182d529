package frillbook;

import java.util.List;
import java.util.Random;

/** Draws what a brief needs beyond the cutting: prices, rates and habits. */
final class PricedBriefs {
  private static final List<String> TASKS =
      List.of(
          "cut_strips",
          "cut_discs",
          "join_strips",
          "finish_edge",
          "gather",
          "mark_rings",
          "sew_rows",
          "make_back",
          "close_edge",
          "fill_close",
          "finish_off");

  private final Random random;

  PricedBriefs(long seed) {
    random = new Random(~seed);
  }

  Briefs priced(Briefs briefs) {
    String currency = (String) pick("GBP", "JPY", "KWD", "EUR");
    return sewn(choices(money(times(habits(prices(briefs)))))).in(currency);
  }

  private Briefs prices(Briefs briefs) {
    Briefs priced = briefs.with("quantity", pick(1, 1, 2, 7, 50));
    for (String what :
        List.of("frill_fabric", "base_fabric", "interfacing", "zip", "fill", "thread")) {
      priced = priced.with("price_" + what, pick(0, cents(20), cents(2000)));
    }
    for (String extra : List.of("extra_one", "extra_two", "extra_three")) {
      priced =
          priced
              .with(extra + "_needed", pick(0, 3, cents(9)))
              .with(extra + "_step", pick(1, .25, .1))
              .with("price_" + extra, pick(0, cents(9)));
    }
    return priced.with("charge_as", pick("bought", "used"));
  }

  private Briefs habits(Briefs briefs) {
    return briefs
        .with("interfaced", pick("none", "base", "base_and_back"))
        .with("interfacing_width", pick(36, 44, 60, 90))
        .with("edge_finish", pick("raw", "narrow_hem", "overlocked", "folded"))
        .with("fill_fraction", pick(.6, .8, 1))
        .with("fill_medium", pick(12, 18, 40))
        .with("gathering_rows", pick(1, 2, 3))
        .with("thread_waste", pick(0, .15, .2))
        .with("reel_length", pick(100, 500));
  }

  private Briefs times(Briefs briefs) {
    Briefs timed = briefs;
    for (String task : TASKS) {
      timed =
          timed
              .with(task + "_rate", pick(0, .5, 3.5, cents(10)))
              .with(task + "_setup", pick(0, 5, cents(20)));
    }
    return timed;
  }

  private Briefs money(Briefs briefs) {
    return briefs
        .with("hourly_rate", pick(0, 15, cents(40), cents(2500)))
        .with("overhead_rate", pick(0, .15, 1))
        .with("profit_basis", pick("markup", "margin"))
        .with("profit_rate", pick(0, .3, .95, random.nextDouble() * .9))
        .with("tax_rate", pick(0, .2, .0825, random.nextDouble() * .3))
        .with("tidy_step", pick(0, .5, 1, 5, .25))
        .with("deposit_rate", pick(0, .5, 1, random.nextDouble()))
        .with("offer_each", pick(0, 40, cents(200)));
  }

  private Briefs choices(Briefs briefs) {
    return briefs
        .with("choice_two_more", pick(-1, -.5, .5))
        .with("choice_two_spacing", pick(.5, .75, 2, 6))
        .with("choice_three_more", pick(-.25, 0, 1.5))
        .with("choice_three_spacing", pick("", .25, .75, 1));
  }

  private Briefs sewn(Briefs briefs) {
    Briefs timed = briefs;
    for (String task : Briefs.UNTIMED) {
      timed = timed.with(task + "_rate", pick(0, 2, cents(10)));
    }
    return timed
        .with("gather_by", pick("machine", "hand"))
        .with("gather_hand_rate", cents(5))
        .with("edge_thread_ratio", pick(8, 12, 15))
        .with("gather_section", pick(2, 12, 100));
  }

  /** Up to {@code most}, in hundredths. */
  private double cents(int most) {
    return random.nextInt(most * 100) / 100.0;
  }

  private Object pick(Object... values) {
    return values[random.nextInt(values.length)];
  }
}
