package frillbook.agreement;

import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Looks for a brief that has no use for an input, and for one that has, among those that differ
 * from the presets in one of the inputs its use speaks of.
 */
final class UseSearch {
  private static final Map<String, InputTemplate> INPUTS = new HashMap<>();
  private static final Map<String, LineTemplate> LINES = new HashMap<>();

  static {
    Trials.TEMPLATE.inputs().forEach(input -> INPUTS.put(input.name(), input));
    Trials.TEMPLATE.lines().forEach(line -> LINES.put(line.name(), line));
  }

  private UseSearch() {}

  /** A brief in which {@code input} is used, or one in which it is not. */
  static TrialBrief find(InputTemplate input, boolean used) {
    return candidates(input)
        .filter(brief -> isUsed(input, brief) == used)
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "no brief found in which "
                        + input.name()
                        + (used ? " is used" : " is not used")
                        + "; add one to the uses"));
  }

  private static Stream<TrialBrief> candidates(InputTemplate input) {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
    Set<String> spokenOf = new LinkedHashSet<>();
    input.use().when().ifPresent(when -> collect(when, spokenOf));
    spokenOf.remove(input.name());
    return Stream.concat(
        Stream.of(preset),
        spokenOf.stream()
            .map(INPUTS::get)
            .flatMap(other -> values(other).map(value -> preset.with(other.name(), value))));
  }

  /** The inputs that a formula speaks of, by itself or by way of lines. */
  private static void collect(FormulaText formula, Set<String> inputs) {
    formula.tokens().stream()
        .filter(token -> token.kind() == FormulaToken.Kind.NAME)
        .map(FormulaToken::text)
        .forEach(
            name -> {
              if (INPUTS.containsKey(name)) {
                inputs.add(name);
              } else if (LINES.containsKey(name)) {
                collect(LINES.get(name).formula(), inputs);
              }
            });
  }

  private static Stream<Object> values(InputTemplate input) {
    if (!input.choices().isEmpty()) {
      return List.<Object>copyOf(input.choices()).stream();
    }
    return input.isWords()
        ? Stream.of("", "words")
        : Stream.of(input.range(Trials.INCH).from(), input.range(Trials.INCH).to());
  }

  /** A cell that is used and cannot be used is a fault. */
  private static boolean isUsed(InputTemplate input, TrialBrief brief) {
    Object unusable = UnusableValues.of(input, brief.unit()).reduce((a, b) -> b).orElseThrow();
    SheetValues sheet = Trials.given(brief.with(input.name(), unusable));
    int row = Trials.TEMPLATE.checkedInputs().indexOf(input);
    return sheet.column("input_fault").get(row).equals(1.0);
  }
}
