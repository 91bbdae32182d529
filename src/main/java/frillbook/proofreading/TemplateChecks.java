package frillbook.proofreading;

import frillbook.formula.Sort;
import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.source.Position;
import frillbook.source.SourceText;
import frillbook.template.CellRow;
import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.Optional;

/** The checks that need the whole template: names, formulas, circles and the layout. */
public final class TemplateChecks {
  private final Declarations declarations;
  private final NameMeanings meanings;
  private final FormulaCheck formulas;
  private final WordingCheck wordings;
  private final Mistakes mistakes;

  private TemplateChecks(WorkbookTemplate template, Mistakes mistakes) {
    this.declarations = new Declarations(template, mistakes);
    this.meanings = new NameMeanings(template);
    this.formulas = new FormulaCheck(declarations, meanings, mistakes);
    this.wordings = new WordingCheck(template, declarations, mistakes);
    this.mistakes = mistakes;
  }

  public static void check(WorkbookTemplate template, Mistakes mistakes) {
    TemplateChecks checks = new TemplateChecks(template, mistakes);
    template.inputs().forEach(checks::input);
    template.lines().forEach(checks::line);
    template.checks().forEach(checks::check);
    template.tables().forEach(checks::table);
    template.rows(SentenceTemplate.class).forEach(checks::sentence);
    template.rows(ChartTemplate.class).stream()
        .map(ChartTemplate::sentence)
        .forEach(checks::sentence);
    template.rows(CellRow.class).stream()
        .flatMap(row -> row.cells().stream())
        .flatMap(cell -> cell.ruled().stream())
        .forEach(checks::ruled);
    ChartCheck.check(template, mistakes);
    MoneyCheck.check(template, checks.declarations, mistakes);
    CodeCheck.check(template, mistakes);
    CircleCheck.check(template, checks.declarations, mistakes);
    SheetCheck.check(template, mistakes);
    PartCheck.check(template, mistakes);
  }

  private void input(InputTemplate input) {
    Wanted wanted = Wanted.truth("used of input " + input.name());
    input.use().when().ifPresent(used -> formulas.check(used, wanted, Optional.empty()));
  }

  private void line(LineTemplate line) {
    Wanted wanted = Wanted.of("line " + line.name(), line.format());
    formulas.check(line.formula(), wanted, Optional.empty());
    line.text().ifPresent(wordings::check);
    guard(line.guard(), line.position());
  }

  private void check(CheckTemplate check) {
    formulas.check(check.formula(), Wanted.truth("check " + check.name()), Optional.empty());
    wordings.check(check.message());
    guard(check.guard(), check.position());
    check
        .change()
        .filter(name -> !declarations.is(name, Declarations.Kind.INPUT))
        .filter(name -> !declarations.is(name, Declarations.Kind.LINE))
        .ifPresent(
            name ->
                mistakes.add(
                    check.position(),
                    "the cell to change " + name + ", which is no input or line",
                    "the name of an input or a line",
                    "correct it or leave change out" + Nearest.hint(name, declarations.names())));
  }

  private void sentence(SentenceTemplate sentence) {
    wordings.check(sentence.text());
    guard(sentence.guard(), sentence.position());
  }

  private void ruled(SourceText name) {
    if (!declarations.is(name.value(), Declarations.Kind.LINE)) {
      mistakes.add(
          name.position(),
          "ruled: " + name,
          "the name of a line",
          "correct it or leave it out" + Nearest.hint(name.value(), declarations.names()));
    }
  }

  private void table(TableTemplate table) {
    Wanted shown = Wanted.truth("show of table " + table.name());
    table.show().ifPresent(show -> formulas.check(show, shown, Optional.of(table)));
    table.columns().forEach(column -> column(table, column));
    table.boxes().ifPresent(boxes -> boxes(boxes.count()));
    guard(table.guard(), table.position());
    table.columns().forEach(column -> guard(column.guard(), column.position()));
  }

  private void boxes(SourceText count) {
    String name = count.value();
    boolean isOne =
        declarations.is(name, Declarations.Kind.LINE)
            || declarations.is(name, Declarations.Kind.INPUT);
    if (!count.isEmpty() && (!isOne || meanings.named(name).mayBe(Sort.TEXT))) {
      mistakes.add(
          count.position(),
          "count: " + count,
          "the name of an input or a line that is a number",
          declarations.has(name)
              ? "choose another"
              : "correct it" + Nearest.hint(name, declarations.names()));
    }
  }

  private void column(TableTemplate table, ColumnTemplate column) {
    Wanted wanted = Wanted.of("column " + column.name(), column.format());
    column.formulas().forEach(formula -> formulas.check(formula, wanted, Optional.of(table)));
    column.text().ifPresent(text -> wordings.check(text, table));
  }

  private void guard(Optional<String> guard, Position at) {
    guard
        .filter(name -> !declarations.is(name, Declarations.Kind.LINE))
        .ifPresent(
            name ->
                mistakes.add(
                    at,
                    "the guard " + name + ", which is not a line",
                    "the name of a line that is 1 or 0, or none",
                    "write guard: none or add the line"
                        + Nearest.hint(name, declarations.names())));
    guard
        .filter(name -> declarations.is(name, Declarations.Kind.LINE))
        .filter(name -> meanings.named(name).mayBe(Sort.TEXT))
        .ifPresent(
            name ->
                mistakes.add(
                    at,
                    "the guard " + name + ", which is a text",
                    "the name of a line that is 1 or 0, or none",
                    "add a line of format flag that compares the text"));
  }
}
