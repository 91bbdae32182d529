package frillbook.workbook;

import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.FormulaText;
import frillbook.template.FormulaToken;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.Position;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A cell with a formula, and what its value is.
 *
 * @param row from 0
 * @param column from 0
 * @param at where the template says it
 */
public record CalculatedCell(String sheet, int row, int column, Source source, Position at) {

  private static final Set<FormulaToken.Kind> NAMING =
      EnumSet.of(FormulaToken.Kind.NAME, FormulaToken.Kind.CELL, FormulaToken.Kind.CELL_ABOVE);

  /** What a cell says. */
  public sealed interface Source {
    /** The name its value has in the workbook; empty for one without a name. */
    default Optional<String> name() {
      return Optional.empty();
    }

    /** Names its formula speaks of; none for what no template writes out. */
    default Set<String> needs() {
      return Set.of();
    }
  }

  /** The value of a line. */
  public record Line(LineTemplate line) implements Source {
    @Override
    public Optional<String> name() {
      return Optional.of(line.name());
    }

    @Override
    public Set<String> needs() {
      Set<String> needs = names(line.formula());
      line.text().ifPresent(text -> needs.addAll(text.names().keySet()));
      line.guard().ifPresent(needs::add);
      return needs;
    }
  }

  /** The same in the other length unit. */
  public record OtherUnit(LineTemplate line) implements Source {
    @Override
    public Set<String> needs() {
      return Set.of(line.name());
    }
  }

  /**
   * A cell of a table.
   *
   * @param rowNo from 0
   */
  public record Entry(TableTemplate table, ColumnTemplate of, int rowNo) implements Source {
    String column() {
      return of.name();
    }

    @Override
    public Optional<String> name() {
      return Optional.of(of.name());
    }

    @Override
    public Set<String> needs() {
      Set<String> needs = names(of.formula());
      table.show().ifPresent(show -> needs.addAll(names(show)));
      table.guard().ifPresent(needs::add);
      of.guard().ifPresent(needs::add);
      table.show().ifPresent(show -> needs.add(table.columns().get(0).name()));
      needs.remove(of.name());
      return needs;
    }
  }

  /** 0 where a check holds, else the code of its level. */
  public record Fault(CheckTemplate check) implements Source {
    @Override
    public Optional<String> name() {
      return Optional.of(check.name());
    }

    @Override
    public Set<String> needs() {
      Set<String> needs = names(check.formula());
      check.guard().ifPresent(needs::add);
      return needs;
    }
  }

  /** What the check says. */
  public record FaultSentence(CheckTemplate check) implements Source {
    @Override
    public Set<String> needs() {
      return Set.of(check.name());
    }
  }

  /** 0 where an input can be used. */
  public record InputFault(InputTemplate input) implements Source {}

  /**
   * What may be typed into an input that cannot be used.
   *
   * @param good stands there while it can be
   */
  public record Remark(InputTemplate input, String good) implements Source {}

  /** A sentence that follows the plan. */
  public record Sentence(SentenceTemplate sentence) implements Source {
    @Override
    public Set<String> needs() {
      Set<String> needs = new HashSet<>(sentence.text().names().keySet());
      sentence.guard().ifPresent(needs::add);
      return needs;
    }
  }

  /** What all checks say together. */
  public record Verdict() implements Source {}

  private static Set<String> names(FormulaText formula) {
    Set<String> names = new HashSet<>();
    for (FormulaToken token : formula.tokens()) {
      if (NAMING.contains(token.kind())) {
        names.add(token.word());
      }
    }
    return names;
  }

  Set<String> needs() {
    return source.needs();
  }

  /** Every cell that the workbook of {@code template} calculates, sheet by sheet. */
  public static List<CalculatedCell> all(WorkbookTemplate template) {
    List<CalculatedCell> cells = new ArrayList<>();
    Layout layout = new Layout(template);
    for (SheetTemplate sheet : template.sheets()) {
      for (Layout.Placed placed : layout.entries(sheet)) {
        add(cells, sheet.name(), placed.row(), placed.entry(), template, layout);
      }
    }
    return List.copyOf(cells);
  }

  private static void add(
      List<CalculatedCell> cells,
      String sheet,
      int row,
      RowTemplate entry,
      WorkbookTemplate template,
      Layout layout) {
    if (entry instanceof LineTemplate line) {
      cells.add(new CalculatedCell(sheet, row, Layout.VALUE, new Line(line), entry.position()));
      if (line.also()) {
        cells.add(
            new CalculatedCell(
                sheet, row, Layout.OTHER_UNIT, new OtherUnit(line), entry.position()));
      }
    } else if (entry instanceof InputTemplate input) {
      if (layout.fault(input).isPresent()) {
        Remark remark = new Remark(input, input.prompt());
        cells.add(new CalculatedCell(sheet, row, Layout.NOTE, remark, entry.position()));
      }
    } else if (entry instanceof TableTemplate table) {
      addTable(cells, sheet, Layout.dataRow(table, row), table);
    } else if (entry instanceof CheckTemplate check) {
      cells.add(new CalculatedCell(sheet, row, Layout.FAULT, new Fault(check), entry.position()));
      cells.add(
          new CalculatedCell(
              sheet, row, Layout.SENTENCE, new FaultSentence(check), entry.position()));
    } else if (entry instanceof RowTemplate.InputChecks) {
      addInputChecks(cells, sheet, row, template.checkedInputs());
    } else if (entry instanceof SentenceTemplate sentence) {
      cells.add(new CalculatedCell(sheet, row, 0, new Sentence(sentence), entry.position()));
    } else if (entry instanceof ChartTemplate chart) {
      cells.add(
          new CalculatedCell(sheet, row, 0, new Sentence(chart.sentence()), entry.position()));
    } else if (entry instanceof RowTemplate.Verdict) {
      cells.add(new CalculatedCell(sheet, row, 0, new Verdict(), entry.position()));
    }
  }

  private static void addTable(
      List<CalculatedCell> cells, String sheet, int firstRow, TableTemplate table) {
    for (int row = 0; row < table.rows(); row++) {
      for (int column = 0; column < table.columns().size(); column++) {
        ColumnTemplate of = table.columns().get(column);
        Entry entry = new Entry(table, of, row);
        cells.add(new CalculatedCell(sheet, firstRow + row, column, entry, of.position()));
      }
    }
  }

  private static void addInputChecks(
      List<CalculatedCell> cells, String sheet, int firstRow, List<InputTemplate> inputs) {
    int row = firstRow;
    for (InputTemplate input : inputs) {
      cells.add(
          new CalculatedCell(sheet, row, Layout.FAULT, new InputFault(input), input.position()));
      Remark remark = new Remark(input, FormulaTranslation.FINE);
      cells.add(new CalculatedCell(sheet, row, Layout.SENTENCE, remark, input.position()));
      row++;
    }
  }
}
