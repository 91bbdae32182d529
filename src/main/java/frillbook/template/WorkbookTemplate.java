package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.wording.Wording;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A whole workbook, free of mistakes.
 *
 * @param title of the document
 * @param phrases what it says of itself
 * @param sheets from left to right
 */
public record WorkbookTemplate(String title, Phrases phrases, List<SheetTemplate> sheets) {
  private static final String BEFORE_SHEET =
      "(?<![\\p{L}\\p{N}])(?:[Ss]heet|[Ss]ee|[Oo]n)(?: the)? ";

  public WorkbookTemplate {
    sheets = List.copyOf(sheets);
  }

  /** Every input in reading order. */
  public List<InputTemplate> inputs() {
    return rows(InputTemplate.class);
  }

  /** Every input in the order in which they are checked: part by part. */
  public List<InputTemplate> checkedInputs() {
    List<String> parts =
        rows(RowTemplate.InputChecks.class).stream()
            .flatMap(checks -> checks.parts().stream())
            .toList();
    return inputs().stream()
        .sorted(Comparator.comparing(input -> parts.indexOf(input.use().part())))
        .toList();
  }

  /** Every calculated line in reading order. */
  public List<LineTemplate> lines() {
    return rows(LineTemplate.class);
  }

  /** Every table in reading order. */
  public List<TableTemplate> tables() {
    return rows(TableTemplate.class);
  }

  /** The table that {@code excerpt} shows a part of. */
  public TableTemplate table(RowTemplate.Excerpt excerpt) {
    return tables().stream()
        .filter(table -> table.name().equals(excerpt.table().value()))
        .findFirst()
        .orElseThrow();
  }

  /** Every check in reading order, those of single inputs left out. */
  public List<CheckTemplate> checks() {
    return rows(CheckTemplate.class);
  }

  /** The entries of one kind on all sheets, in reading order. */
  public <T extends RowTemplate> List<T> rows(Class<T> kind) {
    return sheets.stream().flatMap(sheet -> sheet.rows(kind).stream()).toList();
  }

  /**
   * Every length and weight that sentences say, each once, those of a style together; one that is
   * said with its long unit and without it stands among those with it.
   */
  public List<Wording.Measure> measures() {
    Map<String, Wording.Measure> measures = new LinkedHashMap<>();
    Stream.concat(
            wordings().flatMap(text -> text.wording().measures()),
            lines().stream().flatMap(line -> line.longSaid().stream()))
        .forEach(each -> measures.merge(each.name(), each, (one, two) -> one.isLong() ? one : two));
    return measures.values().stream().sorted(Comparator.comparing(Wording.Measure::style)).toList();
  }

  private Stream<WordingText> wordings() {
    return Stream.of(
            rows(SentenceTemplate.class).stream().map(SentenceTemplate::text),
            rows(ChartTemplate.class).stream().map(ChartTemplate::title),
            lines().stream().flatMap(line -> line.text().stream()),
            checks().stream().map(CheckTemplate::message))
        .flatMap(Function.identity());
  }

  /** What stands beside the input or line {@code name}; the name itself where there is none. */
  public String label(String name) {
    return Stream.concat(
            inputs().stream().filter(i -> i.name().equals(name)).map(InputTemplate::label),
            lines().stream().filter(line -> line.name().equals(name)).map(LineTemplate::label))
        .findFirst()
        .orElse(name);
  }

  /**
   * The first sheet but {@code own} that {@code text} tells a reader to look at: “the sheet
   * Cutting”, “see Cutting”, “on the Cutting”; empty where it speaks of none. English alone.
   */
  public Optional<String> spokenOf(String text, SheetTemplate own) {
    String others =
        sheets.stream()
            .map(SheetTemplate::name)
            .filter(name -> !name.equals(own.name()))
            .sorted(Comparator.comparing(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    Matcher found =
        Pattern.compile(BEFORE_SHEET + "(" + others + ")(?![\\p{L}\\p{N}])").matcher(text);
    return found.find() && !found.group(1).isEmpty()
        ? Optional.of(found.group(1))
        : Optional.empty();
  }

  /** Every formula, wherever it stands. */
  public Stream<FormulaText> formulas() {
    return Stream.of(
            inputs().stream().flatMap(input -> input.use().when().stream()),
            lines().stream().map(LineTemplate::formula),
            checks().stream().map(CheckTemplate::formula),
            tables().stream().flatMap(table -> table.show().stream()),
            tables().stream()
                .flatMap(table -> table.columns().stream())
                .flatMap(c -> c.formulas().stream()))
        .flatMap(Function.identity());
  }
}
