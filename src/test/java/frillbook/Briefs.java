package frillbook;

import frillbook.brief.Brief;
import frillbook.brief.Grain;
import frillbook.brief.LengthUnit;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A sensible brief with a few inputs changed, for tests: {@code Briefs.inch().with("diameter",
 * 12).brief()}.
 *
 * @param inputs every input by name; numbers or the word a person picks
 */
public record Briefs(LengthUnit unit, Map<String, Object> inputs) {

  /** An 18 in cushion in 54 in cloth, rows 3/4 in apart, a 2 in frill two and a half times full. */
  public static Briefs inch() {
    return new Briefs(LengthUnit.INCH, inchInputs());
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

  /** The same brief in {@code grain}. */
  public Briefs with(Grain grain) {
    return with("grain", grain.word());
  }

  /** The brief itself. */
  public Brief brief() {
    return Brief.of(unit, inputs);
  }

  private static Map<String, Object> inchInputs() {
    Map<String, Object> inputs = new LinkedHashMap<>();
    cushion(inputs);
    frill(inputs);
    cloth(inputs);
    joins(inputs);
    base(inputs);
    return inputs;
  }

  private static void cushion(Map<String, Object> inputs) {
    inputs.put("diameter", 18);
    inputs.put("ring_spacing", .75);
    inputs.put("row_style", "spiral");
    inputs.put("centre_gap", .5);
    inputs.put("edge_clearance", .5);
    inputs.put("ring_lap", .5);
    inputs.put("quantity", 1);
  }

  private static void frill(Map<String, Object> inputs) {
    inputs.put("fullness", 2.5);
    inputs.put("frill_height", 2);
    inputs.put("stitch_inset", .25);
    inputs.put("edge_finish", "raw");
    inputs.put("hem_turns", .5);
    inputs.put("edge_trim", .125);
    inputs.put("end_allowance", 1);
  }

  private static void cloth(Map<String, Object> inputs) {
    inputs.put("fabric_width", 54);
    inputs.put("grain", "across");
    inputs.put("selvage", .5);
    inputs.put("wash_shrink_length", 0);
    inputs.put("wash_shrink_width", 0);
    inputs.put("bias_stretch", 0);
    inputs.put("shortest_piece", 12);
    inputs.put("spare_strips", 0);
    inputs.put("buy_step", 4.5);
    inputs.put("marking_step", .125);
  }

  private static void joins(Map<String, Object> inputs) {
    inputs.put("join_finish", "French");
    inputs.put("join_allowance", .25);
    inputs.put("join_second_allowance", .375);
    inputs.put("join_line", "by grain");
  }

  private static void base(Map<String, Object> inputs) {
    inputs.put("seam_allowance", .5);
    inputs.put("sewing_takeup", .04);
    inputs.put("base_overlays", 1);
    inputs.put("back_overlays", 0);
    inputs.put("base_fabric_width", 44);
    inputs.put("back_style", "one disc");
    inputs.put("zip_seam", .625);
    inputs.put("back_overlap", 4);
    inputs.put("back_hem", 1);
  }
}
