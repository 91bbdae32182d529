package frillbook.template;

import frillbook.measure.LengthUnit;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import frillbook.wording.CodeWords;
import frillbook.wording.RowWording;
import frillbook.wording.Sentence;
import frillbook.wording.Vocabulary;
import frillbook.wording.Wording;
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
 * @param vocabulary what it says beside numbers
 * @param phrases what it says of itself
 * @param headlines lines told when the workbook has been written, in reading order
 * @param clientSheet name of the sheet a client is given; empty where there is none
 */
public record Form(
    List<InputTemplate> inputs,
    List<InputTemplate> checkedInputs,
    List<Check> checks,
    Vocabulary vocabulary,
    Phrases phrases,
    List<Headline> headlines,
    Optional<String> clientSheet) {

  /**
   * A condition that should hold.
   *
   * @param message what to say when it does not
   * @param guard name of the line that must be 1 for the check to be made; empty for always
   */
  public record Check(String name, CheckLevel level, Wording message, Optional<String> guard) {
    /** What to say when it does not hold. */
    public Sentence sentence() {
      return new Sentence(message, Optional.empty());
    }

    /** What {@code check} says. */
    public static Check of(CheckTemplate check) {
      return new Check(check.name(), check.level(), check.message().wording(), check.guard());
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
    return new Form(
        template.inputs(),
        template.checkedInputs(),
        template.checks().stream().map(Check::of).toList(),
        vocabulary(template),
        template.phrases(),
        template.lines().stream().filter(LineTemplate::headline).map(Headline::of).toList(),
        template.sheets().stream()
            .filter(SheetTemplate::client)
            .map(SheetTemplate::name)
            .findFirst());
  }

  private static Vocabulary vocabulary(WorkbookTemplate template) {
    Map<String, Sentence> texts = new LinkedHashMap<>();
    Map<String, List<CodeWord>> words = new LinkedHashMap<>();
    Map<String, CodeFlag> flags = new LinkedHashMap<>();
    template.inputs().forEach(input -> words.put(input.name(), input.choices()));
    for (LineTemplate line : template.lines()) {
      line.sentence().ifPresent(said -> texts.put(line.name(), said));
      line.flag().ifPresent(flag -> flags.put(line.name(), flag));
      words.put(line.name(), line.words());
    }
    Map<String, RowWording> columns = new LinkedHashMap<>();
    for (TableTemplate table : template.tables()) {
      String first = table.columns().get(0).name();
      for (ColumnTemplate column : table.columns()) {
        words.put(column.name(), column.words());
        column
            .text()
            .ifPresent(text -> columns.put(column.name(), new RowWording(text.wording(), first)));
      }
    }
    words.values().removeIf(List::isEmpty);
    return new Vocabulary(texts, columns, new CodeWords(words), flags);
  }
}
