package frillbook.reading;

import frillbook.formula.NameRules;
import frillbook.source.SourceText;
import frillbook.template.Orientation;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import java.util.ArrayList;
import java.util.List;

/** Reads one sheet. */
public final class SheetReader {
  private static final int MOST_PAGES = 100;

  private SheetReader() {}

  static SheetTemplate read(Block block) {
    SourceText name = block.scope().said(block.requiredRawText("sheet"));
    tellObjection(name, block.scope());
    boolean begins = block.flag("client") && !block.has("title");
    String title = begins ? "" : block.requiredText("title");
    List<RowTemplate> rows = rows(block);
    SheetTemplate sheet =
        new SheetTemplate(
            name.value(),
            title,
            block.text("lead"),
            orientation(block),
            SheetColumns.widths(block.numbers("widths"), rows),
            rows,
            block.flag("plan"),
            pages(block),
            !block.flag("background"),
            !block.flag("unlisted"),
            block.flag("client"),
            links(block),
            block.has("tab") ? block.word("tab", SheetTemplate.Tab.WORK) : usualTab(block),
            name.position());
    block.done();
    return sheet;
  }

  private static int pages(Block block) {
    return block.has("pages")
        ? block.whole("pages", MOST_PAGES, "correct it, or leave it out for as many as it takes")
        : 0;
  }

  private static List<SourceText> links(Block block) {
    return block.has("links")
        ? block.texts("links").stream().map(block.scope()::said).toList()
        : List.of();
  }

  private static SheetTemplate.Tab usualTab(Block block) {
    return block.flag("background") ? SheetTemplate.Tab.BACKGROUND : SheetTemplate.Tab.WORK;
  }

  private static Orientation orientation(Block block) {
    return block.node("orientation").isEmpty()
        ? Orientation.PORTRAIT
        : block.word("orientation", Orientation.PORTRAIT);
  }

  private static void tellObjection(SourceText name, Scope scope) {
    NameRules.sheetObjection(name.value())
        .filter(objection -> !name.isEmpty())
        .ifPresent(
            objection ->
                scope.tell(
                    name.position(),
                    "the sheet name " + name + ", which " + objection,
                    "a name that a spreadsheet takes",
                    "choose another name"));
  }

  private static List<RowTemplate> rows(Block block) {
    List<RowTemplate> rows = new ArrayList<>();
    block.items("rows").forEach(node -> RowReader.read(node, block.scope(), rows));
    return rows;
  }
}
