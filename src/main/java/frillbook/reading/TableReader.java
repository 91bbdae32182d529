package frillbook.reading;

import frillbook.formula.FormulaLexer;
import frillbook.source.SourceText;
import frillbook.template.BlockTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a table with its columns. */
public final class TableReader {
  private static final int MOST_ROWS = 10_000;

  private TableReader() {}

  static TableTemplate read(Block block) {
    SourceText name = block.requiredRawText("table");
    block.call("table " + name);
    List<ColumnTemplate> columns = columns(block);
    TableTemplate table =
        new TableTemplate(
            name.value(),
            block.text("heading"),
            rows(block),
            block.rawText("show").map(show -> FormulaLexer.lex(show, block.scope().mistakes())),
            RowReader.guard(block, "plan_ok"),
            block.flag("paper"),
            blocks(block, columns),
            columns,
            block.position());
    block.done();
    return table;
  }

  private static int rows(Block block) {
    if (block.node("rows").isEmpty()) {
      return (int) Math.max(1, block.number("rows"));
    }
    double rows = block.number("rows");
    if (rows < 1 || rows > MOST_ROWS || rows != Math.rint(rows)) {
      SourceText written = block.rawText("rows").orElse(SourceText.at(block.position(), ""));
      block
          .scope()
          .tell(
              written.position(),
              "rows: " + written,
              "a whole number from 1 to " + MOST_ROWS,
              "correct it");
      return 1;
    }
    return (int) rows;
  }

  private static List<ColumnTemplate> columns(Block block) {
    List<ColumnTemplate> columns = new ArrayList<>();
    block.items("columns").forEach(node -> readColumn(node, block.scope(), columns));
    return columns;
  }

  private static void readColumn(Node node, Scope scope, List<ColumnTemplate> columns) {
    Block block = new Block(node, scope, "column");
    if (block.firstKey().equals("each")) {
      Each.expand(block, "columns", (inner, with) -> readColumn(inner, with, columns));
    } else {
      columns.add(column(block));
    }
  }

  private static ColumnTemplate column(Block block) {
    String name = RowReader.name(block, "column");
    ColumnTemplate column =
        new ColumnTemplate(
            name,
            block.requiredText("label"),
            block.requiredUnit(),
            block.word("format", ValueFormat.NUMBER),
            RowReader.formula(block, "formula"),
            block.requiredText("note"),
            RowReader.guard(block, "none"),
            block.position());
    block.done();
    return column;
  }

  /** Blocks are written as the first and the last of their columns. */
  private static List<BlockTemplate> blocks(Block table, List<ColumnTemplate> columns) {
    List<String> names = columns.stream().map(ColumnTemplate::name).toList();
    Optional<Block> blocks = table.node("blocks").flatMap(node -> table.block("blocks"));
    List<BlockTemplate> found = new ArrayList<>();
    blocks.ifPresent(block -> block.keys().forEach(name -> addBlock(block, name, names, found)));
    return found;
  }

  private static void addBlock(
      Block blocks, String name, List<String> columns, List<BlockTemplate> found) {
    RowReader.tellObjection(SourceText.at(blocks.position(), name), blocks.scope());
    List<String> ends = blocks.texts(name).stream().map(SourceText::value).toList();
    int first = ends.size() == 2 ? columns.indexOf(ends.get(0)) : -1;
    int last = ends.size() == 2 ? columns.indexOf(ends.get(1)) : -1;
    if (first >= 0 && last >= first) {
      List<String> within = columns.subList(first, last + 1);
      found.add(new BlockTemplate(name, within, blocks.position()));
    } else {
      blocks
          .scope()
          .tell(
              blocks.position(),
              "the block " + name + " of " + String.join(", ", ends),
              "the first and the last of its columns, from left to right, of the same table",
              "write " + name + ": [first, last]");
    }
  }
}
