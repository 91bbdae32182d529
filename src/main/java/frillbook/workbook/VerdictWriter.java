package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.look.Span;
import frillbook.press.CellSource;
import frillbook.template.Phrase;
import frillbook.template.RowTemplate;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellReference;

/**
 * Writes what the checks say, a row for each that fails, those that stop first: its level and place
 * as one number, which is shown as a word, and its sentence; then how many more fail. Each leads to
 * the check it says, the last to all of them.
 */
final class VerdictWriter {
  private static final double MORE_HEIGHT = 19;

  private final Page page;
  private final SheetPlaces places;

  VerdictWriter(Page page, SheetPlaces places) {
    this.page = page;
    this.places = places;
  }

  void write(int row) {
    for (int rank = 1; rank <= RowTemplate.Verdict.SENTENCES; rank++) {
      int at = row + rank - 1;
      page.formula(
          at,
          SheetPlaces.LABEL,
          failing(at, rank),
          page.styles()
              .of(Look.LABEL, NumberFormats.failing(page.phrases()), HorizontalAlignment.LEFT));
      say(at, linked(at, sentence(at, rank)));
      page.fit(at, LongestText.SOME_SENTENCE, SheetPlaces.VALUE, page.lastColumn(), Look.SENTENCE);
    }
    int last = row + RowTemplate.Verdict.SENTENCES;
    say(last, more());
    places.firstCheck().ifPresent(check -> page.link(last, SheetPlaces.VALUE, check));
    page.heighten(last, MORE_HEIGHT);
    page.styles().emphasis().addFailing(page.sheet(), row, last, page.lastColumn());
  }

  private void say(int row, String formula) {
    page.formula(row, SheetPlaces.VALUE, formula, page.styles().of(Look.SENTENCE));
    page.mergeToEnd(row, SheetPlaces.VALUE, Look.SENTENCE);
  }

  /**
   * Leads to the row of the failing check, which a link kept beside the cell cannot: it does not
   * follow the plan.
   */
  private String linked(int row, String sentence) {
    return places
        .firstCheck()
        .map(first -> "HYPERLINK(" + rowOfCheck(first, row) + "," + sentence + ")")
        .orElse(sentence);
  }

  /** Where it stands; above the first check where none fails. */
  private static String rowOfCheck(Span first, int row) {
    String above =
        new CellReference(first.sheet(), first.firstRow() - 1, SheetPlaces.LABEL, false, false)
            .formatAsString();
    String column = above.substring(0, above.lastIndexOf('!') + 2);
    return FormulaTranslation.text("#" + column) + "&ROW(" + above + ")+" + place(row);
  }

  /** Which of all checks the row {@code row} says, from 1; 0 for none. */
  private static String place(int row) {
    String code = new CellReference(row, SheetPlaces.LABEL).formatAsString();
    return "MOD(" + code + "," + CellSource.Failing.LEVEL + ")";
  }

  /** After the failing check of the row above the next of its level, else the first of the next. */
  private String failing(int row, int rank) {
    String stops = "COUNTIF(check_fault,1)";
    String all = "(" + stops + "+COUNTIF(check_fault,2))";
    String firstStop = level(1) + "+MATCH(1,check_fault,0)";
    String firstLook = level(2) + "+MATCH(2,check_fault,0)";
    if (rank == 1) {
      return "IF(" + stops + ">0," + firstStop + ",IF(" + all + ">0," + firstLook + ",0))";
    }
    String above = new CellReference(row - 1, SheetPlaces.LABEL).formatAsString();
    String look = "IF(" + stops + "=" + (rank - 1) + "," + firstLook + "," + next(2, above) + ")";
    String later = "IF(" + all + "<" + rank + ",0," + look + ")";
    return "IF(" + stops + ">=" + rank + "," + next(1, above) + "," + later + ")";
  }

  private String next(int level, String above) {
    String from = "INDEX(check_fault," + above + "-" + (CellSource.Failing.LEVEL * level - 1) + ")";
    String to = "INDEX(check_fault," + places.checkCount() + ")";
    return above + "+MATCH(" + level + "," + from + ":" + to + ",0)";
  }

  private static String level(int level) {
    return String.valueOf(CellSource.Failing.LEVEL * level);
  }

  private String sentence(int row, int rank) {
    String code = new CellReference(row, SheetPlaces.LABEL).formatAsString();
    String none = rank == 1 ? page.phrases().say(Phrase.ALL_WELL) : "";
    return "IF("
        + code
        + "=0,"
        + FormulaTranslation.text(none)
        + ",INDEX(check_sentence,"
        + place(row)
        + "))";
  }

  private String more() {
    String count = "COUNTIF(check_fault,\">0\")-" + RowTemplate.Verdict.SENTENCES;
    String said = page.phrases().say(Phrase.MORE, "\u0000");
    int at = said.indexOf(0);
    return "IF("
        + count
        + ">0,"
        + FormulaTranslation.text(said.substring(0, at))
        + "&"
        + count
        + "&"
        + FormulaTranslation.text(said.substring(at + 1))
        + ",\"\")";
  }
}
