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
 * Writes what the checks say while one of them stops, a row for each that fails, those that stop
 * first: its level and place as one number, which is shown as a word, and its sentence; then how
 * many more fail. Each leads to the check it says, the last to all of them.
 */
final class VerdictWriter {
  /** Two lines. */
  private static final double FIRST_HEIGHT = 40;

  private final Page page;
  private final SheetPlaces places;

  VerdictWriter(Page page, SheetPlaces places) {
    this.page = page;
    this.places = places;
  }

  void write(int row) {
    int each = RowTemplate.Verdict.ROWS_EACH;
    for (int rank = 1; rank <= RowTemplate.Verdict.SENTENCES; rank++) {
      int at = row + (rank - 1) * each;
      page.formula(
          at,
          SheetPlaces.LABEL,
          failing(at, rank),
          page.styles()
              .of(Look.VERDICT, NumberFormats.failing(page.phrases()), HorizontalAlignment.LEFT));
      say(at, at + each - 1, linked(place(at), sentence(at)));
    }
    int last = row + RowTemplate.Verdict.ROWS - 1;
    say(last, last, more());
    places.firstCheck().ifPresent(check -> page.link(last, SheetPlaces.VALUE, check));
    page.styles().emphasis().addFailing(page, row, last);
  }

  /** The first of them, and how many there are, in row {@code row} beside the flag. */
  void first(int row) {
    String all = "COUNTIF(check_fault,\">0\")";
    String found = "MATCH(IF(COUNTIF(check_fault,1)>0,1,2),check_fault,0)";
    String count = around(Phrase.FIRST_OF, all);
    String none = FormulaTranslation.text(page.phrases().say(Phrase.ALL_WELL));
    String more = "IF(" + all + ">1,\" \"&" + count + ",\"\")";
    String said = "INDEX(check_sentence," + found + ")&" + more;
    String formula = "IF(" + all + "=0," + none + "," + linked(found, said) + ")";
    page.formula(row, SheetPlaces.UNIT, formula, page.styles().of(Look.SENTENCE));
    page.mergeToEnd(row, SheetPlaces.UNIT, Look.SENTENCE);
    page.heighten(row, FIRST_HEIGHT);
  }

  /** What {@code phrase} says of a number that the formula {@code count} gives. */
  private String around(Phrase phrase, String count) {
    String said = page.phrases().say(phrase, "\u0000");
    int at = said.indexOf(0);
    return FormulaTranslation.text(said.substring(0, at))
        + "&"
        + count
        + "&"
        + FormulaTranslation.text(said.substring(at + 1));
  }

  private void say(int row, int last, String formula) {
    page.formula(row, SheetPlaces.VALUE, formula, page.styles().of(Look.VERDICT));
    page.merge(row, last, SheetPlaces.VALUE, page.lastColumn());
  }

  /**
   * Leads to the row of the failing check, which a link kept beside the cell cannot: it does not
   * follow the plan.
   */
  private String linked(String place, String sentence) {
    return places
        .firstCheck()
        .map(first -> "HYPERLINK(" + rowOfCheck(first, place) + "," + sentence + ")")
        .orElse(sentence);
  }

  /**
   * Where it stands; above the first check where none fails.
   *
   * @param place among all checks, from 1, as a formula
   */
  private static String rowOfCheck(Span first, String place) {
    String above =
        new CellReference(first.sheet(), first.firstRow() - 1, SheetPlaces.LABEL, false, false)
            .formatAsString();
    String column = above.substring(0, above.lastIndexOf('!') + 2);
    return FormulaTranslation.text("#" + column) + "&ROW(" + above + ")+" + place;
  }

  /** Which of all checks the row {@code row} says, from 1; 0 for none. */
  private String place(int row) {
    return "MOD(" + code(row) + "," + CellSource.Failing.LEVEL + ")";
  }

  /** After the failing check of the row above the next of its level, else the first of the next. */
  private String failing(int row, int rank) {
    String stops = "COUNTIF(check_fault,1)";
    String all = "(" + stops + "+COUNTIF(check_fault,2))";
    String firstStop = level(1) + "+MATCH(1,check_fault,0)";
    String firstLook = level(2) + "+MATCH(2,check_fault,0)";
    if (rank == 1) {
      return "IF(" + stops + ">0," + firstStop + ",0)";
    }
    String above = code(row - RowTemplate.Verdict.ROWS_EACH);
    String look = "IF(" + stops + "=" + (rank - 1) + "," + firstLook + "," + next(2, above) + ")";
    String later = "IF(OR(" + stops + "=0," + all + "<" + rank + "),0," + look + ")";
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

  private String sentence(int row) {
    String code = code(row);
    return "IF(" + code + "=0,\"\",INDEX(check_sentence," + place(row) + "))";
  }

  private String more() {
    String count = "COUNTIF(check_fault,\">0\")-" + RowTemplate.Verdict.SENTENCES;
    return "IF(AND(COUNTIF(check_fault,1)>0,"
        + count
        + ">0),"
        + around(Phrase.MORE, "(" + count + ")")
        + ",\"\")";
  }

  private String code(int row) {
    return new CellReference(row, page.firstColumn() + SheetPlaces.LABEL).formatAsString();
  }
}
