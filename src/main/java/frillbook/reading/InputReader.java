package frillbook.reading;

import frillbook.formula.FormulaLexer;
import frillbook.measure.Currencies;
import frillbook.source.SourceText;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.InputUse;
import frillbook.template.PresetWords;
import frillbook.template.Range;
import frillbook.wording.CodeWord;
import java.util.List;
import java.util.Optional;

/** Reads an input and what may be typed into it. */
public final class InputReader {
  /** Excel's limit for the text shown beside a selected cell. */
  private static final int LONGEST_PROMPT = 255;

  /** Excel's limit for a drop-down list written into the sheet. */
  private static final int LONGEST_CHOICES = 255;

  private static final Range NO_RANGE = new Range(0, 0, 0);

  private final Block block;
  private final String name;
  private final List<String> was;
  private final String label;
  private final InputUse use;

  private InputReader(Block block) {
    this.block = block;
    this.name = RowReader.name(block, "input");
    this.was = was(block);
    this.label = block.requiredText("label");
    this.use = use(block);
  }

  static InputTemplate read(Block block) {
    InputTemplate input = new InputReader(block).input();
    block.done();
    return input;
  }

  private InputTemplate input() {
    InputKind kind = block.word("kind", InputKind.NUMBER);
    String unit = unit(kind);
    return switch (kind) {
      case LENGTH -> numeric(kind, unit, range("inch"), range("cm"));
      case NUMBER, PERCENT, COUNT -> oneOrTwoRanges(kind, unit);
      case CHOICE -> choice(unit);
      case CURRENCY -> words(kind, unit, List.of(), currencies());
      case TEXT -> {
        String preset = block.text("default").orElse("");
        yield words(kind, unit, List.of(), PresetWords.both(preset));
      }
    };
  }

  /** A number that means another thing in inches may have two, as a length has. */
  private InputTemplate oneOrTwoRanges(InputKind kind, String unit) {
    if (kind == InputKind.NUMBER && block.has("inch")) {
      return numeric(kind, unit, range("inch"), range("cm"));
    }
    Range range = range(block, kind);
    return numeric(kind, unit, range, range);
  }

  private InputTemplate numeric(InputKind kind, String unit, Range inch, Range cm) {
    return template(kind, unit, inch, cm, List.of(), PresetWords.NONE);
  }

  private InputTemplate choice(String unit) {
    List<CodeWord> choices = CodeWordReader.read(block, "choices");
    SourceText preset = block.requiredRawText("default");
    List<String> codes = choices.stream().map(CodeWord::code).toList();
    tellTooLong(choices);
    if (!preset.isEmpty() && !codes.contains(preset.value())) {
      tell(preset, "the default " + preset, "one of " + String.join(", ", codes));
    }
    return words(InputKind.CHOICE, unit, choices, PresetWords.both(preset.value()));
  }

  private InputTemplate words(
      InputKind kind, String unit, List<CodeWord> choices, PresetWords preset) {
    return template(kind, unit, NO_RANGE, NO_RANGE, choices, preset);
  }

  private InputTemplate template(
      InputKind kind,
      String unit,
      Range inch,
      Range cm,
      List<CodeWord> choices,
      PresetWords preset) {
    return new InputTemplate(
        name, was, label, use, kind, unit, prompt(), inch, cm, choices, preset, block.position());
  }

  private PresetWords currencies() {
    return new PresetWords(currency("inch"), currency("cm"));
  }

  private String currency(String key) {
    SourceText code = block.requiredRawText(key);
    if (!code.isEmpty() && !Currencies.has(code.value())) {
      block
          .scope()
          .tell(
              code.position(),
              "the currency " + code,
              "an ISO 4217 code such as " + Currencies.EXAMPLES,
              "correct it");
    }
    return code.value();
  }

  /** A drop-down list has its words between commas. */
  private void tellTooLong(List<CodeWord> choices) {
    choices.stream()
        .map(CodeWord::word)
        .filter(word -> word.matches(".*[,\"].*"))
        .forEach(word -> tell(choicesAt(), "the choice " + word, "words without comma or quotes"));
    int length = choices.stream().mapToInt(choice -> choice.word().length() + 1).sum() - 1;
    if (length > LONGEST_CHOICES) {
      tell(choicesAt(), length + " characters of choices", "at most " + LONGEST_CHOICES);
    }
  }

  private SourceText choicesAt() {
    return SourceText.at(block.node("choices").map(block::position).orElse(block.position()), "");
  }

  private String unit(InputKind kind) {
    return switch (kind) {
      case LENGTH -> block.unit().orElse("{unit}");
      case PERCENT -> block.unit().orElse("%");
      case CHOICE, CURRENCY, TEXT -> block.unit().orElse("-");
      case NUMBER, COUNT -> block.requiredUnit();
    };
  }

  private String prompt() {
    String prompt = block.requiredText("prompt");
    if (prompt.length() > LONGEST_PROMPT) {
      block
          .scope()
          .tell(
              block.position(),
              "a prompt of " + prompt.length() + " characters",
              "at most " + LONGEST_PROMPT + ", which is all a spreadsheet shows",
              "shorten it");
    }
    return prompt;
  }

  private Range range(String key) {
    Optional<Block> inner = block.block(key);
    Range range = inner.map(found -> range(found, InputKind.LENGTH)).orElse(NO_RANGE);
    inner.ifPresent(Block::done);
    return range;
  }

  private Range range(Block keys, InputKind kind) {
    boolean blank = use.optional() && !keys.has("default");
    double preset = blank ? Range.BLANK : keys.number("default");
    Range range = new Range(preset, keys.number("from"), keys.number("to"));
    if (range.from() > range.to()) {
      tellRange(keys, "from " + range.from() + " to " + range.to(), "from not above to");
    } else if (!blank && !range.holds(range.preset())) {
      tellRange(
          keys,
          "the default " + range.preset(),
          "a value from " + range.from() + " to " + range.to());
    } else if (kind == InputKind.COUNT && !blank && range.preset() != Math.rint(range.preset())) {
      tellRange(keys, "the default " + range.preset(), "a whole number");
    }
    return range;
  }

  private void tellRange(Block keys, String found, String expected) {
    keys.scope().tell(keys.position(), found, expected, "correct default, from or to");
  }

  private void tell(SourceText at, String found, String expected) {
    block.scope().tell(at.position(), found, expected, "correct the input's choices");
  }

  private static List<String> was(Block block) {
    List<SourceText> was = block.has("was") ? block.texts("was") : List.of();
    was.forEach(name -> RowReader.tellObjection(name, block.scope()));
    return was.stream().map(SourceText::value).toList();
  }

  private static InputUse use(Block block) {
    return new InputUse(
        block.requiredRawText("part").value(),
        block.rawText("used").map(used -> FormulaLexer.lex(used, block.scope().mistakes())),
        block.flag("optional"));
  }
}
