package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.source.Position;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WordingText;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeWord;
import frillbook.wording.Wording;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether a sentence speaks only of values that exist, each in a way that suits it. */
public final class WordingCheck {
  private final Declarations declarations;
  private final Map<String, InputTemplate> inputs = new HashMap<>();
  private final Map<String, LineTemplate> lines = new HashMap<>();
  private final Map<String, ColumnTemplate> columns = new HashMap<>();
  private final boolean saysLengths;
  private final Mistakes mistakes;

  WordingCheck(WorkbookTemplate template, Declarations declarations, Mistakes mistakes) {
    this.declarations = declarations;
    this.mistakes = mistakes;
    this.saysLengths = !template.rows(RowTemplate.Said.class).isEmpty();
    template.inputs().forEach(input -> inputs.put(input.name(), input));
    template.lines().forEach(line -> lines.put(line.name(), line));
  }

  void check(WordingText text) {
    check(text.wording(), text);
  }

  /** Checks a sentence said in every row of {@code table}. */
  void check(WordingText text, TableTemplate table) {
    table.columns().forEach(column -> columns.put(column.name(), column));
    check(text.wording(), text);
    columns.clear();
  }

  private void check(Wording wording, WordingText text) {
    for (Wording.Part part : wording.parts()) {
      if (part instanceof Wording.Text words) {
        name(words.name(), text);
        if (isNumber(words.name())) {
          tell(
              text,
              words.name(),
              "the number " + words.name() + " without a pattern",
              "how a number is said",
              "write {" + words.name() + ", number, 0.##} or the like");
        }
      } else if (part instanceof Wording.Number number) {
        name(number.name(), text);
        if (number.style().money()) {
          name(Wording.MONEY_PLACES, text);
        }
        if (isText(number.name())) {
          tell(
              text,
              number.name(),
              "the words " + number.name() + " said as a number",
              "a number",
              "write {" + number.name() + "}");
        }
      } else if (part instanceof Wording.Measure measure) {
        measured(measure, text);
      } else if (part instanceof Wording.Choice choice) {
        name(choice.name(), text);
        choice.cases().forEach(each -> suits(choice.name(), each, text));
        choice.cases().forEach(each -> check(each.wording(), text));
        check(choice.other(), text);
      }
    }
  }

  /** All sentences quote one list, which has room for single values alone. */
  private void measured(Wording.Measure measure, WordingText text) {
    String name = measure.name();
    name(name, text);
    Optional<String> unit =
        Optional.ofNullable(inputs.get(name))
            .map(InputTemplate::unit)
            .or(() -> Optional.ofNullable(lines.get(name)).map(LineTemplate::unit));
    String wanted = measure.style().unit();
    if (columns.containsKey(name) || unit.isPresent() && !unit.get().equals(wanted)) {
      tell(
          text,
          name,
          name + " said as " + measure.style().word(),
          "an input or a line in " + wanted,
          "say it otherwise");
    } else if (!saysLengths) {
      tell(
          text,
          name,
          name + " said as " + measure.style().word() + " in a workbook without said: true",
          "one row said: true, on any sheet",
          "add it to a sheet in the background");
    }
  }

  private void name(String name, WordingText text) {
    if (!inputs.containsKey(name) && !lines.containsKey(name) && !columns.containsKey(name)) {
      tell(
          text,
          name,
          declarations.has(name)
              ? name + ", which is not a single value"
              : "the unknown name " + name,
          "the name of an input or a line",
          "correct it or add what it names" + Nearest.hint(name, declarations.names()));
    }
  }

  private boolean isText(String name) {
    return Optional.ofNullable(inputs.get(name)).map(InputTemplate::isWords).orElse(false)
        || isTextLine(name)
        || columns.containsKey(name) && columns.get(name).format().isWords();
  }

  private boolean isTextLine(String name) {
    return lines.containsKey(name) && lines.get(name).format().isWords();
  }

  private boolean isNumber(String name) {
    return (inputs.containsKey(name) || lines.containsKey(name) || columns.containsKey(name))
        && !isText(name);
  }

  /** Whether the value can ever be the one a case is for. */
  private void suits(String name, Wording.Case each, WordingText text) {
    Object value = each.value();
    List<String> codes = codes(name).stream().map(CodeWord::code).toList();
    if (!codes.isEmpty() && !codes.contains(each.code())) {
      tell(
          text,
          name,
          "the case " + each.code() + " of " + name,
          "one of " + String.join(", ", codes),
          "correct it");
    } else if (isNumber(name) && !(value instanceof Double)) {
      tell(
          text,
          name,
          "the case " + value + " of the number " + name,
          "one, a number behind =, or of a flag yes or no",
          "correct it");
    }
  }

  private List<CodeWord> codes(String name) {
    if (inputs.containsKey(name)) {
      return inputs.get(name).choices();
    }
    return lines.containsKey(name) ? lines.get(name).words() : List.of();
  }

  private void tell(WordingText text, String name, String found, String expected, String remedy) {
    Position at = text.names().getOrDefault(name, text.position());
    mistakes.add(at, found, expected, remedy);
  }
}
