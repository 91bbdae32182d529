package frillbook;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.measure.LengthUnit;
import frillbook.reading.PackagedInputs;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sensible brief with a few inputs changed, for tests: {@code Briefs.inch().with("diameter",
 * 12).brief()}. An input that is not written here is as the templates have it.
 *
 * @param inputs every input by name; numbers or the word a person picks
 */
public record Briefs(LengthUnit unit, Map<String, Object> inputs) {
  /** What tests leave as the templates have it, and which inputs are lengths. */
  private static final List<InputTemplate> TEMPLATES = PackagedInputs.read();

  /** Tasks that take no time where a test does not say otherwise. */
  static final List<String> UNTIMED =
      List.of(
          "talk",
          "sample",
          "fuse",
          "press_strip",
          "pull_up",
          "tack",
          "tuck_ends",
          "fit_zip",
          "pack");

  /**
   * An 18 in cushion in 54 in fabric, rows 3/4 in apart, a 2 in frill two and a half times full.
   */
  public static Briefs inch() {
    return new Briefs(LengthUnit.INCH, inchInputs());
  }

  /** The same brief in the currency with this ISO 4217 code. */
  public Briefs in(String code) {
    return with("currency_code", code);
  }

  /** The same brief with {@code value} for the input {@code name}, which must exist. */
  public Briefs with(String name, Object value) {
    if (!inputs.containsKey(name)) {
      throw new IllegalArgumentException("no input is named " + name);
    }
    Map<String, Object> changed = new LinkedHashMap<>(inputs);
    changed.put(name, value);
    return new Briefs(unit, changed);
  }

  /** The same brief in centimetres, every length as near as a rule with millimetres allows. */
  public Briefs inMillimetres() {
    Map<String, Object> measured = new LinkedHashMap<>(inputs);
    TEMPLATES.stream()
        .filter(input -> input.kind() == InputKind.LENGTH)
        .forEach(
            input -> measured.computeIfPresent(input.name(), (n, inches) -> millimetres(inches)));
    return new Briefs(LengthUnit.CM, measured);
  }

  /** What is blank stays blank. */
  private static Object millimetres(Object inches) {
    return inches instanceof Number n ? (Object) (Math.rint(n.doubleValue() * 25.4) / 10) : inches;
  }

  /** The same brief in {@code grain}. */
  public Briefs with(Grain grain) {
    return with("grain", grain.code());
  }

  /** The brief itself. */
  public Brief brief() {
    return Brief.of(unit, inputs);
  }

  private static Map<String, Object> inchInputs() {
    Map<String, Object> inputs = new LinkedHashMap<>();
    TEMPLATES.forEach(input -> inputs.put(input.name(), input.preset(LengthUnit.INCH)));
    cushion(inputs);
    frill(inputs);
    fabric(inputs);
    joins(inputs);
    base(inputs);
    materials(inputs);
    fill(inputs);
    thread(inputs);
    times(inputs);
    money(inputs);
    choices(inputs);
    return inputs;
  }

  private static void cushion(Map<String, Object> inputs) {
    inputs.put("diameter", 18);
    inputs.put("ring_spacing", .75);
    inputs.put("row_style", "spiral");
    inputs.put("closing_ring", "no");
    inputs.put("marking_method", "spokes");
    inputs.put("centre_gap", .5);
    inputs.put("edge_clearance", .5);
    inputs.put("ring_lap", .5);
    inputs.put("quantity", 1);
  }

  private static void frill(Map<String, Object> inputs) {
    inputs.put("fullness", 2.5);
    inputs.put("frill_height", 2);
    inputs.put("stitch_inset", .25);
    inputs.put("edge_finish", "pinked");
    inputs.put("hem_turns", .5);
    inputs.put("overlock_trim", .125);
    inputs.put("end_allowance", 1);
    inputs.put("gather_section", 12);
  }

  private static void fabric(Map<String, Object> inputs) {
    inputs.put("fabric_width", 54);
    inputs.put("grain", "crosswise");
    inputs.put("selvage", .5);
    inputs.put("squaring_allowance", 0);
    inputs.put("wash_shrink_length", 0);
    inputs.put("wash_shrink_width", 0);
    inputs.put("bias_stretch", 0);
    inputs.put("shortest_piece", 12);
    inputs.put("longest_strip", 2000);
    inputs.put("spare_strips", 0);
    inputs.put("buy_step", 4.5);
    inputs.put("marking_step", .125);
  }

  private static void joins(Map<String, Object> inputs) {
    inputs.put("join_finish", "french");
    inputs.put("join_allowance", .25);
    inputs.put("join_second_allowance", .375);
    inputs.put("join_line", "by_grain");
    inputs.put("joined_by", "order");
    inputs.put("joined_margin", 0);
  }

  private static void base(Map<String, Object> inputs) {
    inputs.put("seam_allowance", .5);
    inputs.put("draw_in", .04);
    inputs.put("matching_discs", 1);
    inputs.put("back_matching_discs", 0);
    inputs.put("matching_disc_fabric", "frill");
    inputs.put("base_fabric_width", 44);
    inputs.put("back_style", "one_disc");
    inputs.put("zip_seam", .625);
    inputs.put("zip_step", 2);
    inputs.put("back_overlap", 4);
    inputs.put("back_hem", 1);
  }

  private static void materials(Map<String, Object> inputs) {
    inputs.put("price_frill_fabric", 12);
    inputs.put("price_base_fabric", 6);
    inputs.put("price_interfacing", 4);
    inputs.put("price_zip", 3);
    inputs.put("price_fill", 5);
    inputs.put("price_pad", 9);
    inputs.put("price_thread", 2.5);
    for (String extra : List.of("extra_one", "extra_two", "extra_three")) {
      inputs.put(extra + "_needed", 0);
      inputs.put(extra + "_step", 1);
      inputs.put("price_" + extra, 0);
    }
    inputs.put("interfaced", "base");
    inputs.put("interfacing_width", 36);
    inputs.put("charge_as", "bought");
    inputs.put("frill_fabric_weight", 80);
    inputs.put("base_fabric_weight", 150);
    inputs.put("interfacing_weight", 60);
  }

  private static void fill(Map<String, Object> inputs) {
    inputs.put("fill_fraction", .6);
    inputs.put("filling", "loose_fibre");
    inputs.put("fill_firmness", "medium");
    inputs.put("fill_medium", 10.8);
    inputs.put("fill_bag_weight", 500);
    inputs.put("pad_extra", 2);
    inputs.put("pad_step", 2);
  }

  private static void thread(Map<String, Object> inputs) {
    inputs.put("stitch_length", 2.5);
    inputs.put("gather_stitch_length", 4);
    inputs.put("gathering_rows", 2);
    inputs.put("gather_by", "machine");
    inputs.put("thread_ratio", 2.5);
    inputs.put("edge_thread_ratio", 12);
    inputs.put("hand_thread_ratio", 1.2);
    inputs.put("thread_waste", .15);
    inputs.put("reel_length", 100);
  }

  private static void times(Map<String, Object> inputs) {
    task(inputs, "cut_strips", 1.5, 10);
    task(inputs, "cut_discs", 3, 5);
    task(inputs, "join_strips", 3, 5);
    task(inputs, "finish_edge", 1, 5);
    task(inputs, "gather", 1.75, 10);
    task(inputs, "mark_rings", .5, 5);
    task(inputs, "sew_rows", 4, 10);
    task(inputs, "make_back", 5, 5);
    task(inputs, "close_edge", 4, 5);
    task(inputs, "fill_close", 15, 5);
    task(inputs, "finish_off", 10, 0);
    inputs.put("gather_hand_rate", 1.75);
    UNTIMED.forEach(task -> inputs.put(task + "_rate", 0));
  }

  private static void task(Map<String, Object> inputs, String task, double rate, double setup) {
    inputs.put(task + "_rate", rate);
    inputs.put(task + "_setup", setup);
  }

  private static void money(Map<String, Object> inputs) {
    inputs.put("currency_code", "GBP");
    inputs.put("hourly_rate", 15);
    inputs.put("overhead_rate", .15);
    inputs.put("profit_basis", "markup");
    inputs.put("profit_rate", .3);
    inputs.put("tax_rate", 0);
    inputs.put("tidy_step", .5);
    inputs.put("deposit_rate", .5);
    inputs.put("offer_each", 0);
    inputs.put("cheaper_share", 1);
  }

  private static void choices(Map<String, Object> inputs) {
    inputs.put("choice_two_more", -.5);
    inputs.put("choice_one_words", "as drawn up");
    inputs.put("choice_two_words", "for every day");
    inputs.put("choice_three_words", "");
    inputs.put("choice_three_more", .5);
  }
}
