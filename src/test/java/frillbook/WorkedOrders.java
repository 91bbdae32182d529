package frillbook;

import frillbook.materials.Material;
import frillbook.measure.LengthUnit;
import frillbook.naming.Coded;
import frillbook.plan.ChosenGrain;
import frillbook.plan.Plan;
import frillbook.thread.Seam;
import frillbook.time.Task;
import java.util.List;
import java.util.function.Function;

/** Two orders small enough to be worked through with pen and paper, under the house's habits. */
public final class WorkedOrders {
  private WorkedOrders() {}

  /**
   * Three cushions of 40 cm, on the bias of a fabric that is washed first and sold by the metre, an
   * matching disc on front and back, a hemmed frill, French joins, zipped backs. By hand, in cm:
   *
   * <p>Rows 2 apart from the centre to the edge are 10 turns, 629.167406 long (computed from the
   * exact spiral). Doubled, and 2 for the ends: 1260.334812; three of them 3781.004436.
   *
   * <p>The strip is 3.4 + 0.5 + 0.6 = 4.5 wide. Stretched by 5 % it is √(2 − 1.05²) = 0.947365 as
   * wide as it was cut, so it is cut 4.750016, marked as 5. Base (40 + 2 × 1) ÷ 0.96 = 43.75,
   * marked as 44; back 42; half of a back 21 + 1.5 = 22.5 high.
   *
   * <p>The fabric is 152 − 2 = 150 wide, washed 0.96 × 150 = 144; of its length 0.9 is left. A
   * diagonal French join takes √2 × 2 × (0.5 + 1) = 4.242641. A strip from edge to edge, 144 × √2 =
   * 203.646753, stretches by 5 % and adds 213.829091 − 4.242641 = 209.586450 to the run.
   *
   * <p>Two metres are too little: strips 3781.004436 × 5 ÷ 1.05 = 18 004.783 cm² and matching discs
   * 6 × π/4 × 44² = 9123.185 cm², over 144 that is 188.388667, and washed two metres are 180. Three
   * are 270: two bands of three matching discs take 88, the strips come from 182 × 144. (Two
   * matching discs in the corners would leave four, which take two bands as well.) The first cut
   * line runs 20 ÷ √2 from the near corner, since shorter strips are not cut, the next ones 5√2
   * apart: 42 strips, since (182 + 144 − 2 × 20 ÷ √2) ÷ 5√2 = 42.103362. From the near corner they
   * are 20, 30 … 200 long; from the far one, where .103362 × 10 is left over, 21.033621, 31.033621
   * … 201.033621; the other 42 − 19 − 19 = 4 run from edge to edge.
   *
   * <p>The first 18 strips of either corner end on its own two edges: (144 − 14.142136) ÷ 5√2 =
   * 18.36 and (144 − 14.873017) ÷ 5√2 = 18.26. They go together in pairs and count as the means of
   * their sides, 5 more each. The nineteenth of either, 200 and 201.033621, ends at 45° to the
   * strip both ways once it is recut.
   *
   * <p>The run asks 3781.004436 − 4.242641 = 3776.761796. The four add 838.345800 and leave
   * 2938.415996. The longest of the others, 201.033621 and 200, add 1.05 × 401.033621 − 2 ×
   * 4.242641 = 412.600021; the longest pair, 196.033621 and 195, 402.100021, the next 21 less, and
   * so on: eight pairs make it 3041.400189, seven 2786.300168. So 4 + 2 + 16 = 22 strips and 21
   * joins. The spare, as good as another 209.586450, asks for 3148.002446: of the ninth pair one
   * strip, 116.033621 in the mean and 111.033621 at its shorter side, adds 1.05 × 111.033621 −
   * 4.242641 = 112.342661, which makes it 3153.742850 without its partner. 23 strips.
   */
  public static Briefs washedBias() {
    return new Briefs(LengthUnit.CM, cushions().in("EUR").inputs());
  }

  /**
   * The same in euros as used, at 12 and 6 a metre of fabric, 4 of interfacing, 3.20 a zip, 5 a
   * bag, 2.50 a reel; 2.3 of something at 1.10 in halves, 7 at 0.20 in sixes, 0.4 at 7. The hour
   * costs 15, and 15 % on top; 30 % markup, 20 % tax, by half euros, a quarter beforehand; 120
   * offered. Every task has its own minutes.
   */
  public static Briefs pricedBias() {
    return times(washedBias())
        .with("charge_as", "used")
        .with("price_zip", 3.2)
        .with("extra_one_needed", 2.3)
        .with("extra_one_step", .5)
        .with("price_extra_one", 1.1)
        .with("extra_two_needed", 7)
        .with("extra_two_step", 6)
        .with("price_extra_two", .2)
        .with("extra_three_needed", .4)
        .with("price_extra_three", 7)
        .with("tax_rate", .2)
        .with("deposit_rate", .25)
        .with("offer_each", 120)
        .with("choice_two_more", 1)
        .with("choice_three_more", 0)
        .with("choice_three_spacing", 2.5);
  }

  /** Every task with its own minutes to set up, so that none is taken for another. */
  private static Briefs times(Briefs briefs) {
    return briefs
        .with("join_strips_rate", 4)
        .with("join_strips_setup", 6)
        .with("finish_edge_setup", 7)
        .with("gather_setup", 11)
        .with("mark_rings_setup", 4)
        .with("sew_rows_rate", 6)
        .with("sew_rows_setup", 12)
        .with("make_back_setup", 8)
        .with("close_edge_rate", 2)
        .with("close_edge_setup", 3)
        .with("fill_close_setup", 9)
        .with("finish_off_setup", 2)
        .with("gather_rate", .5)
        .with("talk_rate", 15)
        .with("sample_rate", 25)
        .with("fuse_rate", 2)
        .with("press_strip_rate", .4)
        .with("pull_up_rate", 2)
        .with("tack_rate", 3)
        .with("tuck_ends_rate", 1.5)
        .with("fit_zip_rate", 10)
        .with("pack_rate", 7);
  }

  private static Briefs cushions() {
    return fabric(Briefs.inch())
        .with("quantity", 3)
        .with("diameter", 40)
        .with("ring_spacing", 2)
        .with("centre_gap", 0)
        .with("edge_clearance", 0)
        .with("fullness", 2)
        .with("end_allowance", 2)
        .with("gather_section", 30)
        .with("frill_height", 3.4)
        .with("stitch_inset", .5)
        .with("edge_finish", "narrow_hem")
        .with("hem_turns", .6)
        .with("matching_discs", 1)
        .with("back_matching_discs", 1)
        .with("seam_allowance", 1)
        .with("back_style", "zipped_halves")
        .with("zip_seam", 1.5)
        .with("interfaced", "base_and_back")
        .with("interfacing_width", 90)
        .with("fill_fraction", .5)
        .with("fill_medium", 10)
        .with("fill_bag_weight", 200)
        .with("reel_length", 200);
  }

  private static Briefs fabric(Briefs briefs) {
    return briefs
        .with("grain", "bias")
        .with("fabric_width", 152)
        .with("base_fabric_width", 100)
        .with("selvage", 1)
        .with("wash_shrink_width", .04)
        .with("wash_shrink_length", .1)
        .with("bias_stretch", .05)
        .with("shortest_piece", 20)
        .with("spare_strips", 1)
        .with("buy_step", 100)
        .with("marking_step", .5)
        .with("join_allowance", .5)
        .with("join_second_allowance", 1);
  }

  /**
   * Two cushions of 12 in with separate rings, across a fabric that is not washed, plain joins, a
   * raw edge, overlapping backs, no matching disc, gathered by hand. By hand, in inches:
   *
   * <p>Circles of 1, 2, 3, 4 and 5 in with a lap of 1/2 in each: 2π × 15 + 2.5 = 96.747780. Two and
   * a half times and 1 for the ends: 242.869449; two of them 485.738898. The strip is 2 + 1/4 wide.
   * Base 13 ÷ 0.96 = 13.54, marked as 13 5/8; back 13; a piece of it 6.5 + 2 + 1 = 9.5 high.
   *
   * <p>Strips of 45 − 1 = 44 in, of which a join takes 1/2: (485.738898 − 0.5) ÷ 43.5 = 11.2, so 12
   * strips and 11 joins, 27 in of fabric, which is six eighths of a yard.
   */
  public static Briefs ringsAcross() {
    return Briefs.inch()
        .with("quantity", 2)
        .with("diameter", 12)
        .with("row_style", "rings")
        .with("ring_spacing", 1)
        .with("centre_gap", 1)
        .with("matching_discs", 0)
        .with("fabric_width", 45)
        .with("join_finish", "plain")
        .with("back_style", "overlapping")
        .with("interfacing_width", 20)
        .with("gather_by", "hand")
        .with("talk_rate", 20)
        .with("sample_rate", 15)
        .with("fuse_rate", 3)
        .with("press_strip_rate", .3)
        .with("tack_rate", 2.5)
        .with("tuck_ends_rate", 1)
        .with("pack_rate", 6);
  }

  public static ChosenGrain work(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().orElseThrow().cut().orElseThrow();
  }

  public static Task task(ChosenGrain work, String code) {
    return named(tasks(work), Task::taskName, code);
  }

  /** Tasks that there is something to do for. */
  public static List<Task> tasks(ChosenGrain work) {
    return work.costing().hours().tasks().stream().flatMap(row -> row.task().stream()).toList();
  }

  public static Seam seam(ChosenGrain work, String code) {
    return named(work.costing().thread().seams(), Seam::seamName, code);
  }

  public static Material material(ChosenGrain work, String code) {
    return named(work.costing().bill().materials().materials(), Material::materialName, code);
  }

  private static <T> T named(List<T> lines, Function<T, Coded> name, String code) {
    return lines.stream().filter(l -> name.apply(l).code().equals(code)).findFirst().orElseThrow();
  }
}
