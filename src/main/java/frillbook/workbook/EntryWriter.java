package frillbook.workbook;

import frillbook.template.CellRow;
import frillbook.template.ChartTemplate;
import frillbook.template.CheckTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;

/** Writes the entries of a sheet, whatever they are. */
final class EntryWriter {
  private final WorkbookTemplate template;
  private final SheetPlaces places;
  private final Page page;
  private final FormulaTranslation formulas;
  private final TextWriter texts;
  private final LineWriter lines;
  private final CheckWriter checks;
  private final TableWriter tables;
  private final ChartWriter charts;
  private final CellWriter cells;

  EntryWriter(
      WorkbookTemplate template, SheetPlaces places, FormulaTranslation formulas, Page page) {
    this.formulas = formulas;
    this.template = template;
    this.places = places;
    this.page = page;
    this.texts = new TextWriter(page, formulas);
    this.lines = new LineWriter(page, places, formulas);
    this.checks = new CheckWriter(page, places, formulas);
    this.tables = new TableWriter(page, formulas, texts);
    this.charts = new ChartWriter(page, places, texts);
    this.cells = new CellWriter(page, formulas);
  }

  /** Writes the title of the sheet. */
  void head() {
    if (page.template().headRows() > 0) {
      texts.head();
    }
  }

  void write(int row, RowTemplate entry) {
    if (entry instanceof RowTemplate.Section section) {
      texts.section(row, section.text());
    } else if (entry instanceof RowTemplate.Note note) {
      texts.note(row, note.text());
    } else if (entry instanceof RowTemplate.Caution caution) {
      texts.caution(row, caution.text());
    } else if (entry instanceof SentenceTemplate sentence) {
      texts.sentence(row, sentence);
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
    } else if (entry instanceof CellRow cells) {
      this.cells.write(row, cells);
    } else if (entry instanceof TableTemplate table) {
      tables.table(row, table);
    } else if (entry instanceof RowTemplate.Excerpt excerpt) {
      tables.excerpt(row, template.table(excerpt), excerpt);
    } else if (entry instanceof ChartTemplate chart) {
      charts.chart(row, chart);
    } else if (entry instanceof RowTemplate.Said) {
      new SaidWriter(page).said(row, template);
    } else if (entry instanceof RowTemplate.Glossary) {
      new GlossaryWriter(page).glossary(row, Glossary.of(template));
    }
  }
}
