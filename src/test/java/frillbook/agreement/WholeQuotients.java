package frillbook.agreement;

import frillbook.brief.Grain;
import frillbook.measure.LengthUnit;
import frillbook.plan.Plan;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;

/**
 * Briefs whose quotients are whole numbers, or would be if 0.1 + 0.2 were 0.3: what should be eight
 * strips must not become nine in one program and eight in the other.
 */
final class WholeQuotients {
  /** Centimetres, for decimals that no computer holds exactly. */
  private final TrialBrief cm;

  private final TrialBrief inch;
  private final List<TrialBrief> briefs = new ArrayList<>();

  private WholeQuotients(WorkbookTemplate template) {
    this.cm = bare(template, Trials.CM);
    this.inch = bare(template, Trials.INCH);
  }

  static List<TrialBrief> of(WorkbookTemplate template) {
    WholeQuotients all = new WholeQuotients(template);
    all.rings();
    all.sizes();
    all.fabricWidths();
    all.stretchedWidths();
    all.runs();
    all.lastFits();
    return List.copyOf(all.briefs);
  }

  /** Nothing is lost at the ends, so that lengths are whole buy steps. */
  private static TrialBrief bare(WorkbookTemplate template, LengthUnit unit) {
    return TrialBrief.preset(template, unit)
        .with("interfaced", "none")
        .with("squaring_allowance", 0.0);
  }

  private void add(String title, TrialBrief brief) {
    briefs.add(brief.titled(title));
  }

  /** Diameter 2 (clearance + gap + n × spacing), clearance 0.1 and gap 0.3. */
  private void rings() {
    for (String style : List.of("spiral", "rings")) {
      for (double spacing : new double[] {0.4, 0.7, 0.9, 1.1, 2.3}) {
        for (int count : new int[] {1, 3, 7, 21}) {
          TrialBrief rows =
              cm.with("edge_clearance", 0.1)
                  .with("stitch_inset", 0.1)
                  .with("centre_gap", 0.3)
                  .with("row_style", style)
                  .with("ring_spacing", spacing)
                  .with("diameter", Math.max(10, 2 * (0.1 + 0.3 + count * spacing)));
          add(count + " " + style + " of " + spacing, rows);
        }
      }
    }
    add("240 rings, none in the middle", smallestRings(0));
    add("a gap too small to count", smallestRings(1e-9));
  }

  private TrialBrief smallestRings(double gap) {
    return inch.with("diameter", 60.0)
        .with("edge_clearance", 0.0)
        .with("stitch_inset", 0.0)
        .with("centre_gap", gap)
        .with("ring_spacing", 0.125)
        .with("row_style", "rings")
        .with("matching_discs", 0.0)
        .with("base_fabric_width", 130.0);
  }

  /** Frill and inset, and base and seams, a whole number of marking steps. */
  private void sizes() {
    for (double step : new double[] {0.1, 0.3, 0.7}) {
      TrialBrief marked = cm.with("marking_step", step).with("stitch_inset", 0.1);
      add("strip of whole steps " + step, marked.with("frill_height", 17 * step - 0.1));
      add("base of whole steps " + step, marked.with("diameter", 150 * step * 0.96 - 3));
      add("back of whole steps " + step, marked.with("diameter", 150 * step - 3));
    }
    add("cover to the hair", cm.with("ring_spacing", 2.2).with("frill_height", 2.2));
    add("reach to the hair", cm.with("ring_spacing", 0.7).with("fullness", 1 + 0.7 / 2.4));
    add("room to the hair", cm.with("ring_spacing", 1.4).with("stitch_inset", 0.8));
    add("bulk to the hair", cm.with("fullness", 2.2).with("fabric_thickness", 20 / 2.2));
  }

  /** The fabric takes exactly so many strips, discs or buy steps. */
  private void fabricWidths() {
    for (Grain grain : Grain.values()) {
      TrialBrief narrow = inGrain(cm, grain).with("frill_height", 5.2).with("stitch_inset", 0.3);
      double strip = narrow.plan().sizes().strip().stripCutWidth();
      double disc = narrow.plan().sizes().discs().baseCutDiameter();
      for (int times : new int[] {2, 3}) {
        TrialBrief discs = narrow.with("matching_discs", 4.0).with("quantity", 3.0);
        add(times + " discs wide, " + grain, discs.with("fabric_width", times * disc + 2));
      }
      for (int times : new int[] {9, 20, 27}) {
        TrialBrief bare = narrow.with("matching_discs", 0.0);
        add(times + " strips wide, " + grain, bare.with("fabric_width", times * strip + 2));
      }
      for (int times : new int[] {1, 3, 7}) {
        TrialBrief steps = narrow.with("buy_step", times * strip);
        add("steps of " + times + " strips, " + grain, steps);
        TrialBrief squared = narrow.with("squaring_allowance", 0.7);
        add(
            "steps of " + times + " strips and the ends, " + grain,
            squared.with("buy_step", times * strip + 0.7));
      }
      add("steps of a disc, " + grain, narrow.with("buy_step", disc));
    }
  }

  /** A strip that narrows as it stretches is cut exactly so many marking steps wide. */
  private void stretchedWidths() {
    for (double stretch : new double[] {0.05, 0.12, 0.2}) {
      TrialBrief bias = inGrain(cm, Grain.BIAS).with("bias_stretch", stretch);
      var strip = bias.plan().sizes().strip();
      double cut = strip.plannedWidth() / strip.biasNarrowing();
      for (int steps : new int[] {7, 20}) {
        add(steps + " marking steps wide", bias.with("marking_step", cut / steps));
      }
    }
  }

  /** The run is exactly n strips: fullness such that n × length − (n − 1) × loss is used up. */
  private void runs() {
    for (Grain grain : Grain.values()) {
      for (String style : List.of("spiral", "rings")) {
        for (double matchingDiscs : new double[] {0, 1}) {
          TrialBrief brief = inGrain(cm, grain).with("row_style", style);
          brief = brief.with("matching_discs", matchingDiscs).with("spare_strips", 0.0);
          for (int strips : new int[] {1, 2, 8}) {
            add(strips + " strips use up the run, " + grain, usedUp(brief, strips));
          }
        }
      }
    }
  }

  private static TrialBrief usedUp(TrialBrief brief, int strips) {
    Plan plan = brief.plan();
    double stitched = plan.rows().orElseThrow().rings().stitchedLength();
    var total = plan.cutting().orElseThrow().cut().orElseThrow().total();
    double run = strips * total.stripLength() - (strips - 1) * total.joinLoss();
    double fullness = (run - brief.number("end_allowance")) / stitched;
    return fullness >= 1
        ? brief.with("fullness", Math.min(6, fullness))
        : brief.with("fullness", 1.0).with("diameter", 12.0);
  }

  /** The widest disc and the longest least strip that just fit. */
  private void lastFits() {
    var sizes = inch.plan().sizes();
    double disc = sizes.discs().baseCutDiameter();
    add("fabric as wide as a matching disc", inch.with("fabric_width", disc + 1));
    add("base fabric as wide as a base", inch.with("base_fabric_width", disc + 1));
    TrialBrief bare = inch.with("matching_discs", 0.0).with("shortest_piece", 24.3);
    add("fabric as wide as the shortest piece", bare.with("fabric_width", 24.3 + 1));
    TrialBrief bias = inGrain(bare, Grain.BIAS);
    double strip = sizes.strip().stripCutWidth();
    double least = (24.3 + 2 * strip) / Math.sqrt(2);
    add("fabric just wide enough for bias", bias.with("fabric_width", least + 1));
    TrialBrief along = inGrain(bare, Grain.LENGTHWISE).with("frill_height", 11.75);
    double wide = along.plan().sizes().strip().stripCutWidth();
    add(
        "fabric as wide as a strip",
        along.with("spare_strips", 0.0).with("fabric_width", wide + 1));
  }

  private static TrialBrief inGrain(TrialBrief brief, Grain grain) {
    return brief.with("grain", grain.code());
  }
}
