package frillbook.template;

import frillbook.formula.FormulaText;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A whole workbook, free of mistakes.
 *
 * @param title of the document
 * @param phrases what it says of itself
 * @param sheets from left to right
 */
public record WorkbookTemplate(String title, Phrases phrases, List<SheetTemplate> sheets) {
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

  /** Every check in reading order, those of single inputs left out. */
  public List<CheckTemplate> checks() {
    return rows(CheckTemplate.class);
  }

  /** The entries of one kind on all sheets, in reading order. */
  public <T extends RowTemplate> List<T> rows(Class<T> kind) {
    return sheets.stream().flatMap(sheet -> sheet.rows(kind).stream()).toList();
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
