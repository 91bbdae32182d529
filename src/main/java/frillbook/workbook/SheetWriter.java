package frillbook.workbook;

import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;

/** Writes one sheet from top to bottom. */
final class SheetWriter {
  private final WorkbookTemplate template;
  private final SheetPlaces places;
  private final Page page;
  private final FormulaTranslation formulas;
  private final TextWriter texts;
  private final LineWriter lines;
  private final CheckWriter checks;
  private final TableWriter tables;
  private final ChartWriter charts;

  SheetWriter(WorkbookTemplate template, SheetPlaces places, Page page) {
    this.formulas = new FormulaTranslation(page.setting(), Form.of(template), places);
    this.template = template;
    this.places = places;
    this.page = page;
    this.texts = new TextWriter(page);
    this.lines = new LineWriter(page, places, formulas);
    this.checks = new CheckWriter(page, places, formulas);
    this.tables = new TableWriter(page, formulas, texts);
    this.charts = new ChartWriter(page, places, formulas, texts);
  }

  void write() {
    page.setWidths();
    texts.head();
    for (SheetPlaces.Placed placed : places.entries(page.template())) {
      write(placed.row(), placed.entry());
    }
    page.styles().moneyPlaces().setLines(page.sheet(), places.entries(page.template()));
    page.styles().lengthPlaces().set(page, places.entries(page.template()));
    page.styles().percentPlaces().set(page.sheet(), places.entries(page.template()));
    PrintSetup.set(page, places);
    PageBreaks.set(page, places);
  }

  private void write(int row, RowTemplate entry) {
    if (entry instanceof RowTemplate.Section section) {
      texts.section(row, section.text());
    } else if (entry instanceof RowTemplate.Note note) {
      texts.note(row, note.text());
    } else if (entry instanceof RowTemplate.Caution caution) {
      texts.caution(row, caution.text());
    } else if (entry instanceof SentenceTemplate sentence) {
      texts.sentence(row, formulas.sentence(sentence), LongestText.of(sentence.text().wording()));
    } else if (entry instanceof RowTemplate.Verdict) {
      new VerdictWriter(page, places).write(row);
    } else if (entry instanceof InputTemplate input) {
      lines.input(row, input);
    } else if (entry instanceof LineTemplate line) {
      lines.line(row, line);
    } else if (entry instanceof CheckTemplate check) {
      checks.check(row, check);
    } else if (entry instanceof RowTemplate.InputChecks) {
      checks.inputs(row, template.checkedInputs());
    } else if (entry instanceof TableTemplate table) {
      tables.table(row, table);
    } else if (entry instanceof ChartTemplate chart) {
      charts.chart(row, chart);
    } else if (entry instanceof RowTemplate.Said) {
      new SaidWriter(page).said(row, template);
    } else if (entry instanceof RowTemplate.Glossary) {
      new GlossaryWriter(page).glossary(row, Glossary.of(template));
    }
  }
}
