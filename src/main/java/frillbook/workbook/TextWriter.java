package frillbook.workbook;

import frillbook.look.Look;
import frillbook.template.Phrase;
import frillbook.template.SentenceTemplate;
import frillbook.wording.Wording;

/** Writes what is only read: titles, headings, notes and cautions. */
final class TextWriter {
  private static final double SECTION_HEIGHT = 24;
  private static final double AIR = 6;

  private final Page page;
  private final FormulaTranslation formulas;

  TextWriter(Page page, FormulaTranslation formulas) {
    this.page = page;
    this.formulas = formulas;
  }

  /** The title in the first row, and the lead under it. */
  void head() {
    paragraph(0, page.template().title(), Look.TITLE);
    page.template()
        .lead()
        .ifPresent(lead -> paragraph(page.template().headRows() - 1, lead, Look.LEAD));
  }

  void section(int row, String text) {
    paragraph(row, text, Look.SECTION);
    page.heighten(row, SECTION_HEIGHT);
  }

  void note(int row, String text) {
    paragraph(row, text, Look.NOTE);
    page.lead(row, 0, page.spokenOfInOneLine(text, 0, Look.NOTE));
    air(row);
  }

  void caution(int row, String text) {
    int framed = row + 1;
    paragraph(framed, page.phrases().say(Phrase.CAUTION, text), Look.CAUTION);
    air(framed);
    free(row);
    free(framed + 1);
  }

  private void air(int row) {
    page.heighten(row, page.sheet().getRow(row).getHeightInPoints() + AIR);
  }

  private void free(int row) {
    page.cell(row, 0, page.styles().of(Look.NOTE));
    page.heighten(row, AIR);
  }

  /** A sentence; the row has room for the longest one it can become. */
  void sentence(int row, SentenceTemplate sentence) {
    sentence(row, sentence, Look.MESSAGE);
  }

  /** The sentence over a chart: what the chart shows, with its number. */
  void chartTitle(int row, SentenceTemplate sentence) {
    sentence(row, sentence, Look.CHART_TITLE);
  }

  private void sentence(int row, SentenceTemplate sentence, Look look) {
    page.sentence(row, 0, sentence, formulas, page.styles().of(look));
    page.mergeToEnd(row, 0, look);
    Wording wording = sentence.text().wording();
    page.lead(row, 0, wording.alwaysSaid(page::spokenOf));
    page.fit(row, LongestText.of(wording), 0, page.lastColumn(), look);
    air(row);
  }

  private void paragraph(int row, String text, Look look) {
    String said = page.setting().say(text);
    page.text(row, 0, said, page.styles().of(look));
    page.mergeToEnd(row, 0, look);
    page.fit(row, said, 0, page.lastColumn(), look);
  }
}
