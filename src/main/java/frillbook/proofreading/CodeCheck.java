package frillbook.proofreading;

import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether flags ask for codes that there are, and nothing else tells codes apart by a word. */
public final class CodeCheck {
  private static final Set<String> COMPARING = Set.of("=", "<>");

  private final Map<String, InputTemplate> choices;

  /** Names by every word that one of their values has, in small letters. */
  private final Map<String, String> ofWord = new HashMap<>();

  private final Mistakes mistakes;

  private CodeCheck(WorkbookTemplate template, Mistakes mistakes) {
    this.mistakes = mistakes;
    this.choices =
        template.inputs().stream()
            .filter(input -> input.kind() == InputKind.CHOICE)
            .collect(Collectors.toMap(InputTemplate::name, Function.identity(), (one, two) -> one));
    choices.forEach((name, input) -> remember(name, input.choices()));
    template.lines().forEach(line -> remember(line.name(), line.words()));
    template.tables().stream()
        .flatMap(table -> table.columns().stream())
        .forEach(column -> remember(column.name(), column.words()));
  }

  private void remember(String name, List<CodeWord> words) {
    words.stream()
        .flatMap(each -> Stream.concat(Stream.of(each.code()), each.words()))
        .forEach(word -> ofWord.putIfAbsent(word.toLowerCase(Locale.ROOT), name));
  }

  static void check(WorkbookTemplate template, Mistakes mistakes) {
    CodeCheck check = new CodeCheck(template, mistakes);
    template.formulas().forEach(check::formula);
    template.lines().forEach(line -> line.flag().ifPresent(flag -> check.flag(line, flag)));
  }

  private void flag(LineTemplate line, CodeFlag flag) {
    InputTemplate input = choices.get(flag.input());
    if (input == null) {
      mistakes.add(
          line.position(),
          "the input " + flag.input() + " of flag " + line.name() + ", which is not a choice",
          "an input of kind choice",
          "correct it" + Nearest.hint(flag.input(), choices.keySet()));
    } else if (input.choices().stream().noneMatch(each -> each.code().equals(flag.code()))) {
      List<String> codes = input.choices().stream().map(CodeWord::code).toList();
      mistakes.add(
          line.position(),
          "the code " + flag.code() + " of flag " + line.name(),
          "one of " + String.join(", ", codes),
          "correct it" + Nearest.hint(flag.code(), codes));
    }
  }

  private void formula(FormulaText formula) {
    List<FormulaToken> tokens =
        formula.tokens().stream().filter(token -> token.kind() != FormulaToken.Kind.SPACE).toList();
    for (int index = 0; index < tokens.size(); index++) {
      if (isCompared(tokens, index - 1) || isCompared(tokens, index + 1)) {
        word(formula, tokens.get(index));
      }
    }
  }

  private static boolean isCompared(List<FormulaToken> tokens, int index) {
    return index >= 0 && index < tokens.size() && COMPARING.contains(tokens.get(index).text());
  }

  private void word(FormulaText formula, FormulaToken token) {
    boolean text = token.kind() == FormulaToken.Kind.STRING;
    String word = text ? token.text().substring(1, token.text().length() - 1) : "";
    String name = ofWord.get(word.toLowerCase(Locale.ROOT));
    if (text && name != null) {
      mistakes.add(
          formula.position(token),
          "a comparison with " + token.text() + ", a word of " + name,
          choices.containsKey(name) ? "a flag" : "a number or a flag",
          choices.containsKey(name)
              ? "add a row flag: … with input: " + name + " and its code, and test that"
              : "test what " + name + " hangs on, since words may be changed");
    }
  }
}
