package frillbook.pressing;

import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.measure.LengthUnit;
import frillbook.press.CellSource;
import frillbook.source.Position;
import frillbook.source.SourceText;
import frillbook.template.CellRow;
import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.NamedRow;
import frillbook.template.Phrase;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.UnitText;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.Sentence;
import frillbook.wording.Wording;
import frillbook.workbook.Glossary;
import frillbook.workbook.SheetPlaces;
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
 * @param needs names its formula speaks of; none for what no template writes out
 * @param at where the template says it
 */
public record CalculatedCell(
    String sheet, int row, int column, CellSource source, Set<String> needs, Position at) {

  private static final Set<FormulaToken.Kind> NAMING =
      EnumSet.of(FormulaToken.Kind.NAME, FormulaToken.Kind.CELL, FormulaToken.Kind.CELL_ABOVE);

  private static Set<String> needs(Optional<String> guard) {
    Set<String> needs = new HashSet<>();
    guard.ifPresent(needs::add);
    return needs;
  }

  private static Set<String> needs(LineTemplate line) {
    Set<String> needs = needs(line.guard());
    needs.addAll(names(line.formula()));
    line.text().ifPresent(text -> needs.addAll(text.names().keySet()));
    line.flag().ifPresent(flag -> needs.add(flag.input()));
    return needs;
  }

  private static Set<String> needs(TableTemplate table, ColumnTemplate column) {
    Set<String> needs = needs(table.guard());
    column.guard().ifPresent(needs::add);
    column.formulas().forEach(formula -> needs.addAll(names(formula)));
    column.text().ifPresent(text -> needs.addAll(text.names().keySet()));
    table.show().ifPresent(show -> needs.addAll(names(show)));
    table.show().ifPresent(show -> needs.add(table.columns().get(0).name()));
    needs.remove(column.name());
    return needs;
  }

  private static Set<String> needs(CheckTemplate check) {
    Set<String> needs = needs(check.guard());
    needs.addAll(names(check.formula()));
    return needs;
  }

  private static Set<String> needs(SentenceTemplate sentence) {
    Set<String> needs = needs(sentence.guard());
    needs.addAll(sentence.text().names().keySet());
    return needs;
  }

  private static Set<String> names(FormulaText formula) {
    Set<String> names = new HashSet<>();
    for (FormulaToken token : formula.tokens()) {
      if (NAMING.contains(token.kind())) {
        names.add(NamedRow.column(token.word()));
      }
    }
    return names;
  }

  /** Every cell that the workbook of {@code template} in {@code unit} calculates, by sheet. */
  public static List<CalculatedCell> all(WorkbookTemplate template, LengthUnit unit) {
    List<CalculatedCell> cells = new ArrayList<>();
    SheetPlaces places = new SheetPlaces(template, unit);
    for (SheetTemplate sheet : template.sheets()) {
      for (SheetPlaces.Placed placed : places.entries(sheet)) {
        add(cells, sheet.name(), placed, template, places);
      }
    }
    return List.copyOf(cells);
  }

  private static void add(
      List<CalculatedCell> cells,
      String sheet,
      SheetPlaces.Placed placed,
      WorkbookTemplate template,
      SheetPlaces places) {
    int row = placed.row();
    RowTemplate entry = placed.entry();
    Place place = new Place(cells, sheet, entry.position());
    if (entry instanceof LineTemplate line) {
      place.addUnit(row, line.name(), line.unit());
      int column = places.column(line);
      place.add(row, column, new CellSource.Line(line.name()), needs(line));
      if (line.isVerdict()) {
        place.add(
            row,
            SheetPlaces.UNIT,
            new CellSource.FirstVerdict(sentences(template, places)),
            Set.of());
      } else if (line.also()) {
        int beside = SheetPlaces.VALUE + SheetPlaces.OTHER_UNIT - column;
        place.add(row, beside, beside(line), Set.of(line.name()));
      }
    } else if (entry instanceof InputTemplate input) {
      place.addUnit(row, input.name(), input.unit());
      places
          .customary(input)
          .map(unit -> new CellSource.Converted(input.name(), unit))
          .ifPresent(shown -> place.add(row, SheetPlaces.OTHER_UNIT, shown, Set.of(input.name())));
      if (places.fault(input).isPresent()) {
        place.add(
            row,
            places.noteColumn(input),
            new CellSource.Remark(input, input.prompt(), ""),
            Set.of());
      }
    } else if (entry instanceof TableTemplate table) {
      addTable(cells, sheet, SheetPlaces.dataRow(table, row), placed.column(), table);
    } else if (entry instanceof RowTemplate.Excerpt excerpt) {
      addExcerpt(place, placed, excerpt, template.table(excerpt));
    } else if (entry instanceof CheckTemplate check) {
      Form.Check judged = Form.Check.of(check);
      place.add(row, SheetPlaces.FAULT, new CellSource.Fault(judged), needs(check));
      CellSource sentence = places.sentence(check);
      Set<String> said = new HashSet<>(check.message().names().keySet());
      said.add(check.name());
      place.add(row, SheetPlaces.SENTENCE, sentence, said);
    } else if (entry instanceof RowTemplate.InputChecks) {
      addInputChecks(cells, sheet, row, template, places);
    } else if (entry instanceof SentenceTemplate sentence) {
      place.addSentence(row, placed.column(), sentence);
    } else if (entry instanceof CellRow cellRow) {
      for (CellRow.Cell cell : cellRow.cells()) {
        cell.said().ifPresent(said -> place.addSentence(row, placed.column() + cell.from(), said));
      }
    } else if (entry instanceof ChartTemplate chart) {
      if (chart.isTitled()) {
        place.addSentence(row, placed.column(), chart.sentence());
      }
    } else if (entry instanceof RowTemplate.Verdict) {
      addVerdict(place, row, placed.column(), template, places);
    } else if (entry instanceof RowTemplate.Said) {
      int next = row;
      for (Wording.Measure measure : template.measures()) {
        place.addSaid(next++, measure);
      }
    } else if (entry instanceof RowTemplate.Glossary) {
      int next = row + 1;
      for (Glossary.Entry explained : Glossary.of(template)) {
        place.addUnit(next++, SheetPlaces.GLOSSARY_UNIT, explained.unit());
      }
    }
  }

  /** What stands beside a line's value. */
  private static CellSource beside(LineTemplate line) {
    return line.longSaid()
        .<CellSource>map(measure -> new CellSource.LongUnit(measure))
        .or(() -> line.customary().map(unit -> new CellSource.Converted(line.name(), unit)))
        .orElseGet(() -> new CellSource.OtherUnit(line.name()));
  }

  private static void addTable(
      List<CalculatedCell> cells,
      String sheet,
      int firstRow,
      int firstColumn,
      TableTemplate table) {
    for (ColumnTemplate of : table.columns()) {
      new Place(cells, sheet, of.position())
          .addUnit(firstRow - 1, firstColumn + table.place(of.name()), of.unit());
    }
    List<Set<String>> needs = table.columns().stream().map(of -> needs(table, of)).toList();
    for (int row = 0; row < table.rows(); row++) {
      for (int column = 0; column < table.columns().size(); column++) {
        ColumnTemplate of = table.columns().get(column);
        CellSource entry = new CellSource.Entry(of.name(), row);
        new Place(cells, sheet, of.position())
            .add(firstRow + row, firstColumn + table.place(column), entry, needs.get(column));
      }
    }
  }

  private static void addExcerpt(
      Place place, SheetPlaces.Placed placed, RowTemplate.Excerpt excerpt, TableTemplate table) {
    int column = placed.column();
    int head = placed.row() + SheetPlaces.TABLE_HEAD;
    for (SourceText name : excerpt.columns()) {
      place.addUnit(head - 1, column, table.column(name.value()).unit());
      for (int row = 0; row < table.rows(); row++) {
        String closeUp = excerpt.closeUp().map(SourceText::value).orElse("");
        CellSource shown = new CellSource.Excerpt(name.value(), row, closeUp);
        place.add(head + row, column, shown, Set.of(name.value()));
      }
      column++;
    }
  }

  private static List<CellSource.FaultSentence> sentences(
      WorkbookTemplate template, SheetPlaces places) {
    return template.checks().stream().map(places::sentence).toList();
  }

  private static void addVerdict(
      Place place, int row, int column, WorkbookTemplate template, SheetPlaces places) {
    List<CellSource.FaultSentence> checks = sentences(template, places);
    int last = RowTemplate.Verdict.SENTENCES + 1;
    for (int rank = 1; rank <= last; rank++) {
      int at = row + (rank - 1) * RowTemplate.Verdict.ROWS_EACH;
      if (rank < last) {
        CellSource failing = new CellSource.Failing(rank, checks, places.inputsBefore());
        place.add(at, column + SheetPlaces.LABEL, failing, Set.of());
      }
      CellSource said = new CellSource.Verdict(rank, checks);
      place.add(at, column + SheetPlaces.VALUE, said, Set.of());
    }
  }

  private static void addInputChecks(
      List<CalculatedCell> cells,
      String sheet,
      int firstRow,
      WorkbookTemplate template,
      SheetPlaces places) {
    int row = firstRow;
    String fine = template.phrases().say(Phrase.FINE);
    for (InputTemplate input : template.checkedInputs()) {
      Place place = new Place(cells, sheet, input.position());
      place.add(row, SheetPlaces.FAULT, new CellSource.InputFault(input), Set.of());
      CellSource remark = new CellSource.Remark(input, fine, places.said(input.name()));
      place.add(row, SheetPlaces.SENTENCE, remark, Set.of());
      row++;
    }
  }

  /** Where the cells of one entry of a template are. */
  private record Place(List<CalculatedCell> cells, String sheet, Position at) {
    /** A unit of money follows the currency; any other is written once. */
    void addUnit(int row, String name, String unit) {
      if (UnitText.isCalculated(unit)) {
        Sentence said = new Sentence(UnitText.beside(name, unit), Optional.empty());
        String follows = UnitText.isMoney(unit) ? UnitText.CURRENCY : name;
        add(row, SheetPlaces.UNIT, new CellSource.Said(said), Set.of(follows));
      }
    }

    /** The same where no value stands beside it. */
    void addUnit(int row, int column, String unit) {
      if (UnitText.isMoney(unit)) {
        Sentence said = new Sentence(UnitText.of(unit), Optional.empty());
        add(row, column, new CellSource.Said(said), Set.of(UnitText.CURRENCY));
      }
    }

    /** What says the same in every plan is written once. */
    void addSentence(int row, int column, SentenceTemplate sentence) {
      if (!sentence.isFixed()) {
        add(row, column, new CellSource.Said(sentence.sentence()), needs(sentence));
      }
    }

    void addSaid(int row, Wording.Measure measure) {
      Set<String> needs = Set.of(measure.name());
      add(row, SheetPlaces.VALUE, new CellSource.Parts(measure), needs);
      add(row, SheetPlaces.SAID, new CellSource.Said(measure.brief().sentence()), needs);
      if (measure.isLong()) {
        add(row, SheetPlaces.LONG_SAID, new CellSource.Said(measure.sentence()), needs);
      }
    }

    void add(int row, int column, CellSource source, Set<String> needs) {
      cells.add(new CalculatedCell(sheet, row, column, source, needs, at));
    }
  }
}
