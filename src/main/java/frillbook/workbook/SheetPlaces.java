package frillbook.workbook;

import frillbook.formula.FormulaToken;
import frillbook.look.Span;
import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.press.CellSource;
import frillbook.template.BlockTemplate;
import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.NamedRow;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Where everything of a template goes, settled before the first cell is written. */
public final class SheetPlaces {
  public static final int LABEL = 0;
  public static final int VALUE = 1;
  public static final int UNIT = 2;
  public static final int OTHER_UNIT = 3;
  public static final int NOTE = 4;

  /** Columns of a check row. */
  public static final int FAULT = 1;

  public static final int SENTENCE = 2;

  /** Columns of a length in words, as sentences say it, and with its long unit. */
  public static final int SAID = 2;

  public static final int LONG_SAID = 3;

  /** Column of the units in the list of all names. */
  public static final int GLOSSARY_UNIT = 2;

  /** Rows of a table above its data, its heading left out: labels and units. */
  public static final int TABLE_HEAD = 2;

  /**
   * An entry and where it begins.
   *
   * @param row from 0
   * @param column from 0
   */
  public record Placed(RowTemplate entry, int row, int column) {}

  private final WorkbookTemplate template;
  private final LengthUnit unit;
  private final Map<String, List<Placed>> entries = new LinkedHashMap<>();
  private final Set<String> spokenOf;
  private final Map<String, Span> names = new LinkedHashMap<>();
  private final Map<String, Span> faults = new LinkedHashMap<>();
  private final List<Span> checks = new ArrayList<>();

  public SheetPlaces(WorkbookTemplate template, LengthUnit unit) {
    this.template = template;
    this.unit = unit;
    this.spokenOf =
        template
            .formulas()
            .flatMap(formula -> formula.tokens().stream())
            .map(FormulaToken::text)
            .collect(Collectors.toSet());
    template.sheets().forEach(this::place);
    nameChecks();
  }

  /** The entries of a sheet with their rows, from top to bottom. */
  public List<Placed> entries(SheetTemplate sheet) {
    return entries.get(sheet.name());
  }

  /** Every defined name and its cells. */
  public Map<String, Span> names() {
    return names;
  }

  /** The cell that is 1 when the input cannot be used; empty without such checks. */
  public Optional<Span> fault(InputTemplate input) {
    return Optional.ofNullable(faults.get(input.name()));
  }

  /** Beside the cell of {@code input}: what it asks for, or why it cannot be used. */
  Span note(InputTemplate input) {
    Span cell = names.get(input.name());
    return Span.cell(cell.sheet(), cell.firstRow(), noteColumn(input));
  }

  /**
   * Where the words beside {@code input} begin: behind its unit, or what it is in another, or the
   * room that a person's own words have there.
   */
  public int noteColumn(InputTemplate input) {
    return input.isFree() || customary(input).isPresent() ? NOTE : OTHER_UNIT;
  }

  /** The cell of the input to change where {@code check} fails. */
  Optional<Span> change(CheckTemplate check) {
    return check.change().map(names::get);
  }

  /** What {@code check} says, and of which cell. */
  public CellSource.FaultSentence sentence(CheckTemplate check) {
    return new CellSource.FaultSentence(
        Form.Check.of(check), check.change().map(this::said).orElse(""));
  }

  /** The cell of the input {@code name} as it is said behind a sentence. */
  public String said(String name) {
    Span cell = names.get(name);
    return " (" + cell.sheet() + " B" + (cell.firstRow() + 1) + ")";
  }

  /** Checks of inputs that stand before the others. */
  public int inputsBefore() {
    return template.checks().stream()
        .findFirst()
        .map(check -> names.get(check.name()).firstRow() - checks.get(0).firstRow())
        .orElse(0);
  }

  /** The cell that says whether any check is made, for whoever wants to see them all. */
  Optional<Span> firstCheck() {
    return checks.stream().findFirst();
  }

  /** How many checks there are, those of inputs among them. */
  int checkCount() {
    return checks.size();
  }

  /**
   * The same by its place among the faults of all inputs: short and without the name of a sheet, as
   * the condition of a look must be.
   */
  Optional<Integer> faultPlace(InputTemplate input) {
    int place = List.copyOf(faults.keySet()).indexOf(input.name()) + 1;
    return place == 0 ? Optional.empty() : Optional.of(place);
  }

  private void place(SheetTemplate sheet) {
    List<Placed> placed = new ArrayList<>();
    int row = sheet.headRows();
    int column = 0;
    int begin = row;
    for (RowTemplate entry : sheet.rows()) {
      if (entry instanceof RowTemplate.Beside beside) {
        begin = row;
        column = beside.column();
      } else if (entry instanceof RowTemplate.Below) {
        row = begin;
        column = 0;
      } else {
        placed.add(new Placed(shown(entry), row, column));
        name(sheet.name(), entry, row, column);
        row += depth(entry);
      }
    }
    entries.put(sheet.name(), placed);
  }

  /** What is quoted looks like the line it is the value of. */
  private RowTemplate shown(RowTemplate entry) {
    return entry instanceof RowTemplate.Quote quote
        ? template.lines().stream()
            .filter(line -> line.name().equals(quote.name().toString()))
            .findFirst()
            .orElseThrow()
            .quoted(quote)
        : entry;
  }

  private int depth(RowTemplate entry) {
    if (entry instanceof TableTemplate table) {
      // One row stays free under a table.
      return headRow(table, 0) + TABLE_HEAD + table.rows() + 1;
    } else if (entry instanceof RowTemplate.Excerpt excerpt) {
      return TABLE_HEAD + template.table(excerpt).rows() + 1;
    } else if (entry instanceof ChartTemplate chart) {
      return chart.isTitled() ? chart.height() + ChartWriter.MORE_ROWS : 0;
    } else if (entry instanceof RowTemplate.Caution) {
      // A narrow free row above and below its frame.
      return 3;
    } else if (entry instanceof RowTemplate.NewPage) {
      return 0;
    } else if (entry instanceof RowTemplate.Verdict) {
      return RowTemplate.Verdict.ROWS;
    } else if (entry instanceof RowTemplate.InputChecks) {
      return template.inputs().size();
    } else if (entry instanceof RowTemplate.Said) {
      return template.measures().size() + 1;
    } else if (entry instanceof RowTemplate.Glossary) {
      return 1 + Glossary.of(template).size() + 1;
    }
    return 1;
  }

  /** The row of a table's labels when the table begins in {@code row}. */
  static int headRow(TableTemplate table, int row) {
    return row + (table.heading().isPresent() ? 1 : 0);
  }

  /** The first row of a table's data when the table begins in {@code row}. */
  public static int dataRow(TableTemplate table, int row) {
    return headRow(table, row) + TABLE_HEAD;
  }

  private void name(String sheet, RowTemplate entry, int row, int column) {
    if (entry instanceof InputTemplate input) {
      names.put(input.name(), Span.cell(sheet, row, VALUE));
    } else if (entry instanceof LineTemplate line) {
      names.put(line.name(), Span.cell(sheet, row, column(line)));
    } else if (entry instanceof CheckTemplate check) {
      names.put(check.name(), Span.cell(sheet, row, FAULT));
      checks.add(Span.cell(sheet, row, FAULT));
    } else if (entry instanceof TableTemplate table) {
      nameTable(sheet, table, dataRow(table, row), column);
    } else if (entry instanceof RowTemplate.InputChecks inputChecks) {
      nameInputChecks(sheet, inputChecks, row);
    } else if (entry instanceof RowTemplate.Said) {
      nameSaid(sheet, row);
    }
  }

  /** The unit that {@code input} is shown in beside its own; empty for none. */
  public Optional<Customary> customary(InputTemplate input) {
    return input.customary(unit);
  }

  /** Where the value of {@code line} stands: behind another that is shown in its place. */
  public int column(LineTemplate line) {
    return unit == LengthUnit.INCH && line.customary().isPresent() ? OTHER_UNIT : VALUE;
  }

  private void nameSaid(String sheet, int row) {
    int next = row;
    for (Wording.Measure measure : template.measures()) {
      names.put(measure.brief().cell(), Span.cell(sheet, next, SAID));
      if (measure.isLong()) {
        names.put(measure.cell(), Span.cell(sheet, next, LONG_SAID));
      }
      next++;
    }
  }

  private void nameTable(String sheet, TableTemplate table, int row, int from) {
    for (ColumnTemplate column : table.columns()) {
      int index = from + table.place(column.name());
      names.put(column.name(), Span.column(sheet, row, table.rows(), index));
      if (!column.namesRows()) {
        nameCells(table, column, Span.cell(sheet, row, index));
      }
    }
    for (BlockTemplate block : table.blocks()) {
      int begin = table.indexOf(block.columns().get(0));
      int first = from + table.place(begin);
      int last = from + table.place(begin + block.columns().size()) - 1;
      names.put(block.name(), new Span(sheet, row, row + table.rows() - 1, first, last));
    }
  }

  /** A cell that no formula speaks of needs no name. */
  private void nameCells(TableTemplate table, ColumnTemplate column, Span first) {
    int row = first.firstRow();
    for (NamedRow each : table.named()) {
      Span cell = Span.cell(first.sheet(), row++, first.firstColumn());
      if (spokenOf.contains(each.cell(column))) {
        names.put(each.cell(column), cell);
      }
    }
  }

  private void nameInputChecks(String sheet, RowTemplate.InputChecks inputChecks, int row) {
    List<InputTemplate> inputs = template.checkedInputs();
    int next = row;
    for (InputTemplate input : inputs) {
      Span fault = Span.cell(sheet, next++, FAULT);
      faults.put(input.name(), fault);
      checks.add(fault);
    }
    if (next > row) {
      names.put("input_fault", Span.column(sheet, row, next - row, FAULT));
    }
    List<String> parts = inputs.stream().map(input -> input.use().part()).toList();
    for (String part : inputChecks.parts()) {
      int first = row + parts.indexOf(part);
      int count = Collections.frequency(parts, part);
      names.put(RowTemplate.InputChecks.faults(part), Span.column(sheet, first, count, FAULT));
    }
  }

  /** The template's checks stand one below the other; the reader has seen to it. */
  private void nameChecks() {
    if (!checks.isEmpty()) {
      String sheet = checks.get(0).sheet();
      int row = checks.get(0).firstRow();
      names.put("check_fault", Span.column(sheet, row, checks.size(), FAULT));
      names.put("check_sentence", Span.column(sheet, row, checks.size(), SENTENCE));
    }
  }
}
