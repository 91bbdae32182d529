package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.Span;
import frillbook.source.SourceText;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Writes one sheet from top to bottom, and what stands beside its first columns. */
final class SheetWriter {
  private SheetWriter() {}

  static void write(
      WorkbookTemplate template, SheetPlaces places, FormulaTranslation formulas, Page page) {
    page.setWidths();
    List<SheetPlaces.Placed> entries = places.entries(page.template());
    Map<Integer, EntryWriter> writers = new HashMap<>();
    writers.put(0, new EntryWriter(template, places, formulas, page.columns(0, lastOfFirst(page))));
    writers.get(0).head();
    links(page);
    for (SheetPlaces.Placed placed : entries) {
      writers
          .computeIfAbsent(
              placed.column(),
              from ->
                  new EntryWriter(
                      template, places, formulas, page.columns(from, page.lastColumn())))
          .write(placed.row(), placed.entry());
    }
    page.styles().moneyPlaces().setLines(page.sheet(), entries);
    page.styles().lengthPlaces().set(page, entries);
    page.styles().percentPlaces().set(page.sheet(), entries);
    PrintSetup.set(page, places);
    PageBreaks.set(page, places);
  }

  /** A free column parts the first ones from those beside them. */
  private static int lastOfFirst(Page page) {
    return page.template().besideColumn().stream()
        .map(column -> column - 2)
        .findFirst()
        .orElse(page.lastColumn());
  }

  /**
   * Leads to other sheets: in the first rows where columns stand beside the first ones, else under
   * the title, in columns wide enough for a sheet's name.
   */
  private static void links(Page page) {
    List<String> links = page.template().links().stream().map(SourceText::value).toList();
    OptionalInt beside = page.template().besideColumn();
    int row = beside.isPresent() ? 0 : 1;
    int column = beside.orElse(0);
    for (String sheet : links) {
      while (column < page.lastColumn() && page.widthOf(column) < SheetTemplate.LINK_WIDTH) {
        column++;
      }
      if (column > page.lastColumn()) {
        row++;
        column = beside.orElse(0);
      }
      page.text(row, column, sheet, page.styles().of(Look.LINK));
      page.link(row, column, Span.cell(sheet, 0, 0));
      column++;
    }
  }
}
