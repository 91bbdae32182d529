package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.template.CellRow;
import frillbook.wording.Wording;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Writes rows of cells that stand in columns of their own. */
final class CellWriter {
  private final Page page;
  private final FormulaTranslation formulas;
  private int number;

  CellWriter(Page page, FormulaTranslation formulas) {
    this.page = page;
    this.formulas = formulas;
  }

  void write(int row, CellRow cells) {
    for (CellRow.Cell cell : cells.cells()) {
      write(row, cell);
      if (cells.height().isEmpty()) {
        fit(row, cell);
      }
    }
    cells.height().ifPresent(height -> page.heighten(row, height));
  }

  private void write(int row, CellRow.Cell cell) {
    XSSFCellStyle style = style(cell);
    for (int column = cell.to(); column >= cell.from(); column--) {
      page.cell(row, column, style);
    }
    cell.said().ifPresent(said -> page.sentence(row, cell.from(), said, formulas, style));
    if (cell.kind() == CellRow.Kind.STEP) {
      page.lead(row, cell.from(), wording(cell).alwaysSaid(page::spokenOf));
      hideWhileEmpty(row, cell);
    }
    if (cell.kind() == CellRow.Kind.NUMBER) {
      page.cell(row, cell.from(), page.styles().of(Look.NUMBER, NumberFormats.GENERAL))
          .setCellValue(++number);
    } else if (cell.kind() == CellRow.Kind.TICK) {
      new TickBoxes(page).offer(row, row, cell.from(), cell.from());
    }
    page.merge(row, cell.from(), cell.to());
    cell.ruled().ifPresent(name -> rule(row, cell, name.value()));
  }

  /** Without a plan a step has no words, and its number and its boxes would stand alone. */
  private void hideWhileEmpty(int row, CellRow.Cell step) {
    int first = page.firstColumn();
    page.styles()
        .emphasis()
        .hideEmpty(
            page.sheet(),
            new CellRangeAddress(row, row, first, first + page.lastColumn()),
            first + step.from());
  }

  private XSSFCellStyle style(CellRow.Cell cell) {
    Styles styles = page.styles();
    return cell.ruled().isPresent() ? styles.unruled(look(cell)) : styles.of(look(cell));
  }

  private void rule(int row, CellRow.Cell cell, String name) {
    int first = page.firstColumn();
    CellRangeAddress cells = new CellRangeAddress(row, row, first + cell.from(), first + cell.to());
    page.styles().emphasis().addRules(page.sheet(), look(cell), name, cells);
  }

  /** Room for the longest it can say; letters that shrink need no more than a line. */
  private void fit(int row, CellRow.Cell cell) {
    if (!look(cell).shrinks()) {
      page.fit(row, LongestText.of(wording(cell)), cell.from(), cell.to(), look(cell));
    }
  }

  private static Wording wording(CellRow.Cell cell) {
    return cell.said().map(said -> said.text().wording()).orElse(Wording.NOTHING);
  }

  private static Look look(CellRow.Cell cell) {
    return Look.valueOf(cell.kind().name());
  }
}
