package frillbook.agreement;

import frillbook.brief.Grain;
import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.Range;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Briefs at the ends of every range, where mistakes of one too many or too few show. */
final class EdgeBriefs {
  private static final Set<String> CUTTING_PARTS = Set.of("shape", "fabric");

  private final WorkbookTemplate template;
  private final List<TrialBrief> briefs = new ArrayList<>();

  private EdgeBriefs(WorkbookTemplate template) {
    this.template = template;
  }

  /** All of them in both units. */
  static List<TrialBrief> of(WorkbookTemplate template) {
    EdgeBriefs edges = new EdgeBriefs(template);
    for (LengthUnit unit : List.of(Trials.INCH, Trials.CM)) {
      TrialBrief preset = TrialBrief.preset(template, unit);
      for (Grain grain : Grain.values()) {
        edges.add(preset.with("grain", grain.code()), edges.cutting());
      }
      edges.add(preset, edges.other());
    }
    return List.copyOf(edges.briefs);
  }

  /** Inputs that the cutting may depend on, and so the grain matters. */
  private List<InputTemplate> cutting() {
    return template.inputs().stream()
        .filter(input -> CUTTING_PARTS.contains(input.use().part()))
        .toList();
  }

  private List<InputTemplate> other() {
    List<InputTemplate> cutting = cutting();
    return template.inputs().stream().filter(input -> !cutting.contains(input)).toList();
  }

  private void add(TrialBrief base, List<InputTemplate> inputs) {
    String grain = " on " + base.inputs().get("grain");
    for (InputTemplate input : inputs) {
      for (Object value : ends(input, base.unit())) {
        String title = input.name() + " at " + value + grain;
        briefs.add(base.with(input.name(), value).titled(title));
      }
    }
    briefs.add(base.titled("presets" + grain));
    briefs.add(allAt(base, true).titled("all smallest" + grain));
    briefs.add(allAt(base, false).titled("all largest" + grain));
  }

  /**
   * The smallest and the largest value, or every word; of currencies the fewest and most places.
   */
  private static List<Object> ends(InputTemplate input, LengthUnit unit) {
    if (input.kind() == InputKind.TEXT) {
      return List.of("", "x".repeat(InputTemplate.LONGEST_TEXT));
    } else if (input.kind() == InputKind.CURRENCY) {
      return List.of("JPY", "CLF");
    } else if (input.kind() == InputKind.CHOICE) {
      return input.choices().stream().<Object>map(CodeWord::code).toList();
    }
    Range range = input.range(unit);
    return List.of(range.from(), range.to());
  }

  private TrialBrief allAt(TrialBrief base, boolean smallest) {
    TrialBrief brief = base;
    for (InputTemplate input : template.inputs()) {
      if (!input.isWords()) {
        Range range = input.range(base.unit());
        brief = brief.with(input.name(), smallest ? range.from() : range.to());
      }
    }
    return brief;
  }
}
