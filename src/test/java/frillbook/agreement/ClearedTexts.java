package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Briefs in which somebody has emptied cells that hold texts. Some programs take them for 0. */
final class ClearedTexts {
  /** Words that look like nothing else, where the template presets none. */
  private static final String WORDS = "words of the maker";

  private ClearedTexts() {}

  private static List<String> names() {
    return Trials.TEMPLATE.inputs().stream()
        .filter(input -> input.kind() == InputKind.TEXT)
        .map(InputTemplate::name)
        .toList();
  }

  /** The presets with words in every cell that takes words. */
  static TrialBrief worded(LengthUnit unit) {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, unit).with("quantity", 3.0);
    for (String name : names()) {
      brief = brief.with(name, WORDS);
    }
    return brief.titled("words everywhere");
  }

  private static TrialBrief cleared(TrialBrief worded, List<String> names) {
    TrialBrief brief = worded;
    for (String name : names) {
      brief = brief.with(name, null);
    }
    return brief.titled("without " + names);
  }

  /** One text after the other, and all. */
  static Stream<TrialBrief> each(LengthUnit unit) {
    TrialBrief worded = worded(unit);
    return Stream.concat(names().stream().map(List::of), Stream.of(names()))
        .map(names -> cleared(worded, names));
  }

  /** Every second text, the others, and all. */
  static Stream<TrialBrief> byHalves(LengthUnit unit) {
    List<String> even = new ArrayList<>();
    List<String> odd = new ArrayList<>();
    for (String name : names()) {
      (even.size() > odd.size() ? odd : even).add(name);
    }
    TrialBrief worded = worded(unit);
    return Stream.of(even, odd, names()).map(names -> cleared(worded, names));
  }
}
