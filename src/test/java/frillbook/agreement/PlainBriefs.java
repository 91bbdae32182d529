package frillbook.agreement;

import frillbook.brief.Grain;
import frillbook.measure.LengthUnit;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;

/** Briefs a person can picture, each with something special about it. */
final class PlainBriefs {
  private PlainBriefs() {}

  static List<TrialBrief> of(WorkbookTemplate template) {
    List<TrialBrief> briefs = new ArrayList<>();
    for (LengthUnit unit : List.of(Trials.INCH, Trials.CM)) {
      TrialBrief preset = TrialBrief.preset(template, unit);
      for (Grain grain : Grain.values()) {
        briefs.addAll(special(preset.with("grain", grain.code())));
      }
    }
    return List.copyOf(briefs);
  }

  private static List<TrialBrief> special(TrialBrief brief) {
    TrialBrief many = brief.with("quantity", 50.0);
    TrialBrief rings = brief.with("row_style", "rings");
    TrialBrief washed = brief.with("wash_shrink_length", 0.07).with("wash_shrink_width", 0.03);
    TrialBrief bare = brief.with("matching_discs", 0.0);
    return List.of(
        oneStrip(brief).titled("no joins"),
        oneRing(brief).titled("one turn"),
        oneRing(rings).titled("one ring"),
        rings.with("centre_gap", 0.0).titled("rings without a gap"),
        brief.with("centre_gap", 0.0).titled("spiral from the centre"),
        many.titled("fifty cushions"),
        many.with("matching_discs", 4.0)
            .with("back_matching_discs", 4.0)
            .titled("four hundred matching discs"),
        bare.titled("no matching discs"),
        brief
            .with("quantity", 3.0)
            .with("matching_disc_fabric", "base")
            .titled("matching discs of base fabric"),
        bare.with("spare_strips", 20.0).titled("twenty spare strips"),
        brief.with("spare_strips", 20.0).with("matching_discs", 4.0).titled("spares beside discs"),
        washed.titled("washed fabric"),
        brief.with("bias_stretch", 0.12).titled("fabric that stretches on the bias"),
        brief.with("join_line", "diagonal").titled("diagonal joins"),
        brief.with("join_line", "square").titled("square joins"),
        without(brief, "choice_two").titled("no second choice"),
        without(without(brief, "choice_two"), "choice_three").titled("no other choice"),
        brief.with("back_style", "zipped_halves").with("quantity", 3.0).titled("zipped backs"),
        brief.with("back_style", "overlapping").with("quantity", 3.0).titled("overlapping backs"));
  }

  private static TrialBrief without(TrialBrief brief, String choice) {
    return brief.with(choice + "_more", null);
  }

  /** So little run that one strip is enough. */
  private static TrialBrief oneStrip(TrialBrief brief) {
    TrialBrief small = brief.with("diameter", brief.unit() == LengthUnit.INCH ? 6.0 : 15.0);
    return small
        .with("ring_spacing", brief.unit() == LengthUnit.INCH ? 1.5 : 4.0)
        .with("fullness", 1.0)
        .with("spare_strips", 0.0);
  }

  /** Room for exactly one ring spacing. */
  private static TrialBrief oneRing(TrialBrief brief) {
    double outer = brief.number("diameter") / 2 - brief.number("edge_clearance");
    return brief.with("centre_gap", outer - brief.number("ring_spacing"));
  }
}
