package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.look.Span;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.Phrase;
import org.apache.poi.ss.util.CellReference;

/** Writes checks: label, fault, sentence. */
final class CheckWriter {
  private static final double CHECK_HEIGHT = 19;

  private final Page page;
  private final SheetPlaces places;
  private final FormulaTranslation formulas;
  private final InputFormulas judging;

  CheckWriter(Page page, SheetPlaces places, FormulaTranslation formulas) {
    this.page = page;
    this.places = places;
    this.formulas = formulas;
    this.judging = new InputFormulas(page, formulas);
  }

  void check(int row, CheckTemplate check) {
    String sentence = page.setting().say(LongestText.of(check.message().wording()));
    row(row, check.label(), formulas.fault(check), formulas.sentence(check), sentence);
    places.change(check).ifPresent(cell -> page.link(row, SheetPlaces.LABEL, cell));
    alarm(row, row);
  }

  /** One row for each input, from {@code row} on. */
  void inputs(int row, Iterable<InputTemplate> inputs) {
    int next = row;
    for (InputTemplate input : inputs) {
      String fault = judging.fault(input, input.name());
      row(next, input.label(), fault, sentence(next, input), page.refusal(input));
      page.link(next, SheetPlaces.LABEL, places.names().get(input.name()));
      next++;
    }
    alarm(row, next - 1);
  }

  /** The refusal beside the input and its place; filled down where inputs follow each other. */
  private String sentence(int row, InputTemplate input) {
    Span cell = places.note(input);
    String fault = new CellReference(row, SheetPlaces.FAULT).formatAsString();
    String note =
        new CellReference(cell.sheet(), cell.firstRow(), cell.firstColumn(), false, false)
            .formatAsString();
    String fine = FormulaTranslation.text(page.phrases().say(Phrase.FINE));
    String place = FormulaTranslation.text(" (" + cell.sheet() + " B");
    String label = new CellReference(row, SheetPlaces.LABEL).formatAsString();
    return "IF("
        + fault
        + "=0,"
        + fine
        + ","
        + label
        + "&\" \"&"
        + note
        + "&"
        + place
        + "&ROW("
        + note
        + ")&\")\")";
  }

  private void row(int row, String label, String fault, String sentence, String longest) {
    page.text(row, SheetPlaces.LABEL, page.setting().say(label), page.styles().of(Look.LABEL));
    page.formula(
        row,
        SheetPlaces.FAULT,
        fault,
        page.styles().of(Look.VALUE, NumberFormats.fault(page.phrases())));
    page.formula(row, SheetPlaces.SENTENCE, sentence, page.styles().of(Look.SENTENCE));
    page.mergeToEnd(row, SheetPlaces.SENTENCE, Look.SENTENCE);
    page.heighten(row, CHECK_HEIGHT);
    page.fit(row, label, SheetPlaces.LABEL, SheetPlaces.LABEL, Look.LABEL);
    page.fit(row, longest, SheetPlaces.SENTENCE, page.lastColumn(), Look.HEADER);
  }

  /** Sets off what is wrong in rows {@code first} to {@code last}. */
  private void alarm(int first, int last) {
    page.styles().emphasis().addFaults(page.sheet(), first, last, page.lastColumn());
  }
}
