package frillbook.template;

import frillbook.measure.LengthUnit;
import frillbook.wording.Sentence;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a workbook asks for and what it answers, apart from formulas, places and looks.
 *
 * @param inputs in reading order
 * @param checkedInputs the same in the order in which they are checked
 * @param checks in reading order, those of single inputs left out
 * @param texts lines that are words, by name in reading order
 * @param headlines lines told when the workbook has been written, in reading order
 * @param clientSheet name of the sheet a client is given; empty where there is none
 */
public record Form(
    List<InputTemplate> inputs,
    List<InputTemplate> checkedInputs,
    List<Check> checks,
    Map<String, Sentence> texts,
    List<Headline> headlines,
    Optional<String> clientSheet) {

  /**
   * A condition that should hold.
   *
   * @param message what to say when it does not
   * @param guard name of the line that must be 1 for the check to be made; empty for always
   */
  public record Check(String name, CheckLevel level, String message, Optional<String> guard) {
    /** What {@code check} says. */
    public static Check of(CheckTemplate check) {
      return new Check(check.name(), check.level(), check.message(), check.guard());
    }
  }

  /**
   * One of the main results.
   *
   * @param also whether the other length unit stands beside it
   */
  public record Headline(String name, String label, String unit, ValueFormat format, boolean also) {
    /** What is told of {@code line}. */
    public static Headline of(LineTemplate line) {
      return new Headline(line.name(), line.label(), line.unit(), line.format(), line.also());
    }
  }

  /** What every input has until a person changes it, by name. */
  public Map<String, Object> presets(LengthUnit unit) {
    Map<String, Object> presets = new LinkedHashMap<>();
    inputs.forEach(input -> presets.put(input.name(), input.preset(unit)));
    return presets;
  }

  /** That of {@code template}. */
  public static Form of(WorkbookTemplate template) {
    Map<String, Sentence> texts = new LinkedHashMap<>();
    template
        .lines()
        .forEach(line -> line.sentence().ifPresent(said -> texts.put(line.name(), said)));
    return new Form(
        template.inputs(),
        template.checkedInputs(),
        template.checks().stream().map(Check::of).toList(),
        texts,
        template.lines().stream().filter(LineTemplate::headline).map(Headline::of).toList(),
        template.sheets().stream()
            .filter(SheetTemplate::client)
            .map(SheetTemplate::name)
            .findFirst());
  }
}
