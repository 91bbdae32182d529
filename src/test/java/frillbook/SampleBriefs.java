package frillbook;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Briefs drawn at random with a fixed seed, wide enough that every way of laying out comes up. */
public final class SampleBriefs {
  private static final String LAYOUTS = "frillbook.layout.briefs";

  private final Random random;

  private SampleBriefs(long seed) {
    random = new Random(seed);
  }

  /** {@code count} briefs, the same for the same seed; some of them have no plan. */
  public static List<Briefs> of(int count, long seed) {
    var sample = new SampleBriefs(seed);
    return Stream.generate(sample::next).limit(count).toList();
  }

  /**
   * How many briefs to lay out in JTS: {@code whole} or a sixth of them, or what {@code
   * -Dfrillbook.layout.briefs} says where the same tests are run over and over.
   */
  public static int layouts(int whole) {
    return Integer.getInteger(LAYOUTS, Sample.size(whole, 6));
  }

  /** Whether the same tests are run over and over, on fewer briefs. */
  public static boolean areScaled() {
    return Integer.getInteger(LAYOUTS) != null;
  }

  /**
   * Briefs with prices, rates and habits drawn at random too: free materials, 100 % overhead, 1 and
   * 50 cushions, currencies with 0, 2 and 3 decimals.
   */
  public static List<Briefs> priced(int count, long seed) {
    var drawn = new PricedBriefs(seed);
    return of(count, seed).stream().map(drawn::priced).toList();
  }

  private Briefs next() {
    Briefs cushion =
        Briefs.inch()
            .with("diameter", random.nextBoolean() ? 6 + random.nextInt(25) : between(4, 40))
            .with("ring_spacing", pick(.5, .75, 1, between(.25, 3)))
            .with("fullness", pick(2, 2.5, 3, between(1, 4)))
            .with("quantity", pick(1, 1, 2, 1 + random.nextInt(12)))
            .with("centre_gap", pick(0, .5, 1))
            .with("row_style", pick("spiral", "spiral", "rings"))
            .with("interfaced", "none");
    return own(base(joins(fabric(cushion))));
  }

  private Briefs own(Briefs briefs) {
    return briefs
        .with("joined_by", pick("order", "cushion"))
        .with("longest_strip", pick(2000, 2000, 108, between(36, 300)));
  }

  private Briefs fabric(Briefs briefs) {
    return briefs
        .with("frill_height", pick(1.5, 2, 2.5, between(.5, 6)))
        .with("fabric_width", pick(44, 54, 60, 36, 108, between(20, 130)))
        .with("selvage", pick(0, 0, .5, between(0, 1)))
        .with("wash_shrink_length", pick(0, 0, .05, between(0, .1)))
        .with("wash_shrink_width", pick(0, 0, .03, between(0, .1)))
        .with("bias_stretch", pick(0, 0, .06, between(0, .12)))
        .with("shortest_piece", pick(12, 12, 6, between(3, 24)))
        .with("spare_strips", pick(0, 0, 1, 3))
        .with("buy_step", pick(4.5, 4.5, 1, 9, 36));
  }

  private Briefs joins(Briefs briefs) {
    return briefs
        .with("join_finish", pick("french", "plain", "overlocked"))
        .with("join_allowance", pick(.25, .5, between(.125, 1)))
        .with("join_line", pick("by_grain", "square", "diagonal"));
  }

  private Briefs base(Briefs briefs) {
    return briefs
        .with("matching_discs", pick(0, 1, 1, 2, 3))
        .with("back_matching_discs", pick(0, 0, 1, 2))
        .with("base_fabric_width", pick(44, 60, between(24, 130)))
        .with("back_style", pick("one_disc", "zipped_halves", "overlapping"))
        .with("marking_step", pick(.125, .125, .0625, .5));
  }

  private double between(double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  private Object pick(Object... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
