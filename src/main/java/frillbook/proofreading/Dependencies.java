package frillbook.proofreading;

import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.source.Position;
import frillbook.template.BlockTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.NamedRow;
import frillbook.template.RowTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WordingText;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lists which name needs which, as the compiled workbook will have it. */
public final class Dependencies {
  private final WorkbookTemplate template;
  private final Declarations declarations;
  private final Map<String, BlockTemplate> blocks;
  private final List<Dependency> needs = new ArrayList<>();

  private Dependencies(WorkbookTemplate template, Declarations declarations) {
    this.template = template;
    this.declarations = declarations;
    this.blocks =
        template.tables().stream()
            .flatMap(table -> table.blocks().stream())
            .collect(Collectors.toMap(BlockTemplate::name, Function.identity(), (one, two) -> one));
  }

  static List<Dependency> of(WorkbookTemplate template, Declarations declarations) {
    Dependencies needs = new Dependencies(template, declarations);
    template.inputs().forEach(needs::input);
    template.lines().forEach(needs::line);
    template.checks().forEach(needs::check);
    template.tables().forEach(needs::table);
    return needs.needs;
  }

  /** Whether an input can be used is known once it is known whether it is used. */
  private void input(InputTemplate input) {
    String faults = RowTemplate.InputChecks.faults(input.use().part());
    input.use().when().ifPresent(used -> formula(faults, used));
  }

  private void line(LineTemplate line) {
    formula(line.name(), line.formula());
    line.text().ifPresent(text -> wording(line.name(), text));
    line.flag()
        .ifPresent(flag -> add(line.name(), flag.input(), Dependency.Kind.CELL, line.position()));
    guard(line.name(), line.guard(), line.position());
  }

  private void wording(String from, WordingText text) {
    text.names().forEach((name, at) -> add(from, name, Dependency.Kind.CELL, at));
  }

  private void check(CheckTemplate check) {
    formula(check.name(), check.formula());
    wording(check.name(), check.message());
    guard(check.name(), check.guard(), check.position());
  }

  private void table(TableTemplate table) {
    if (table.columns().isEmpty()) {
      return;
    }
    table.columns().forEach(this::column);
    table.columns().forEach(each -> guard(each.name(), each.guard(), each.position()));
    if (table.show().isEmpty()) {
      table.columns().forEach(column -> guard(column.name(), table.guard(), table.position()));
    } else {
      shownByFirst(table, table.show().get());
    }
  }

  private void column(ColumnTemplate column) {
    column.formulas().forEach(formula -> formula(column.name(), formula));
    column.text().ifPresent(text -> wording(column.name(), text));
  }

  private void shownByFirst(TableTemplate table, FormulaText show) {
    String first = table.columns().get(0).name();
    guard(first, table.guard(), table.position());
    formula(first, show, token -> !token.word().equals(first) && table.named().isEmpty());
    shownInPlace(table, show)
        .forEach(each -> each.formulas().forEach(formula -> formula(first, formula)));
    table.columns().stream()
        .skip(1)
        .forEach(each -> add(each.name(), first, Dependency.Kind.CELL, each.position()));
  }

  /** Where rows have names, the columns whose formulas stand in the condition for their cells. */
  private static List<ColumnTemplate> shownInPlace(TableTemplate table, FormulaText show) {
    Set<String> words =
        show.tokens().stream().map(FormulaToken::word).collect(Collectors.toUnmodifiableSet());
    return table.columns().stream()
        .skip(table.named().isEmpty() ? table.columns().size() : 1)
        .filter(column -> words.contains(column.name()))
        .toList();
  }

  private void guard(String from, Optional<String> guard, Position at) {
    guard.ifPresent(name -> add(from, name, Dependency.Kind.CELL, at));
  }

  private void formula(String from, FormulaText formula) {
    formula(from, formula, token -> true);
  }

  /** A row condition may speak of the first column: its own formula is put in that place. */
  private void formula(String from, FormulaText formula, Function<FormulaToken, Boolean> counts) {
    for (FormulaToken token : formula.tokens()) {
      Position at = formula.position(token);
      switch (token.kind()) {
        case NAME -> expand(token.text()).forEach(to -> add(from, to, kind(token.text()), at));
        case CELL -> {
          if (counts.apply(token)) {
            add(from, token.word(), Dependency.Kind.CELL, at);
          }
        }
        case CELL_ABOVE -> add(from, token.word(), Dependency.Kind.ABOVE, at);
        default -> {
          // Nothing else speaks of a cell.
        }
      }
    }
  }

  private Dependency.Kind kind(String name) {
    return declarations.isSeveralCells(NamedRow.column(name))
        ? Dependency.Kind.WHOLE
        : Dependency.Kind.CELL;
  }

  /** The calculated names that {@code name} stands for. */
  private Stream<String> expand(String name) {
    if (blocks.containsKey(name)) {
      return blocks.get(name).columns().stream();
    } else if (name.equals("check_fault") || name.equals("check_sentence")) {
      return Stream.concat(template.checks().stream().map(CheckTemplate::name), faults());
    } else if (name.equals("input_fault")) {
      return faults();
    }
    return Stream.of(NamedRow.column(name));
  }

  private Stream<String> faults() {
    return template.rows(RowTemplate.InputChecks.class).stream()
        .flatMap(checks -> checks.parts().stream())
        .map(RowTemplate.InputChecks::faults);
  }

  private void add(String from, String to, Dependency.Kind kind, Position at) {
    needs.add(new Dependency(from, to, kind, at));
  }
}
