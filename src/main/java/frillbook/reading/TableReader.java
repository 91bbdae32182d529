package frillbook.reading;

import frillbook.formula.FormulaLexer;
import frillbook.formula.FormulaText;
import frillbook.source.SourceText;
import frillbook.template.BlockTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.NamedRow;
import frillbook.template.TableTemplate;
import frillbook.template.ValueFormat;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads a table with its columns. */
public final class TableReader {
  private static final int MOST_ROWS = 10_000;

  /** Columns of a sheet that one of a table may take, or its boxes. */
  private static final int MOST_SPANNED = 20;

  /** Of a row, in points. */
  private static final int LEAST_HEIGHT = 8;

  private static final int MOST_HEIGHT = 100;

  private TableReader() {}

  static TableTemplate read(Block block) {
    SourceText name = block.requiredRawText("table");
    block.call("table " + name);
    List<Block> named = namedRows(block);
    List<NamedRow> rows = named.stream().map(TableReader::row).toList();
    tellTwice(rows, block.scope());
    List<ColumnTemplate> columns = columns(block, named);
    TableTemplate table =
        new TableTemplate(
            name.value(),
            block.text("heading"),
            named.isEmpty() ? rows(block) : named.size(),
            rows,
            block.rawText("show").map(show -> FormulaLexer.lex(show, block.scope().mistakes())),
            RowReader.guard(block, "plan_ok"),
            block.flag("paper"),
            rowHeight(block),
            block.has("boxes") ? block.block("boxes").map(TableReader::boxes) : Optional.empty(),
            blocks(block, columns),
            columns,
            block.position());
    named.forEach(Block::done);
    block.done();
    return table;
  }

  /** The rows, where they are a list; each gives the formulas of the columns that have none. */
  private static List<Block> namedRows(Block block) {
    boolean isList = block.node("rows").filter(SequenceNode.class::isInstance).isPresent();
    List<Node> rows = isList ? block.items("rows") : List.of();
    return rows.stream().map(node -> new Block(node, block.scope(), "row")).toList();
  }

  private static void tellTwice(List<NamedRow> rows, Scope scope) {
    Set<String> seen = new HashSet<>();
    rows.stream()
        .filter(row -> !seen.add(row.name()))
        .forEach(
            row ->
                scope.tell(
                    row.position(),
                    "the row " + row.name() + " twice",
                    "each row once",
                    "rename one"));
  }

  private static NamedRow row(Block row) {
    return new NamedRow(RowReader.name(row, "row"), row.position());
  }

  private static int rows(Block block) {
    return whole(block, "rows", MOST_ROWS);
  }

  private static int whole(Block block, String key, int most) {
    return block.whole(key, most, "correct it");
  }

  private static OptionalDouble rowHeight(Block block) {
    if (!block.has("row_height")) {
      return OptionalDouble.empty();
    }
    double height = block.number("row_height");
    if (height < LEAST_HEIGHT || height > MOST_HEIGHT) {
      block.tellNumber(
          "row_height", "points from " + LEAST_HEIGHT + " to " + MOST_HEIGHT, "correct it");
    }
    return OptionalDouble.of(height);
  }

  private static TableTemplate.Boxes boxes(Block block) {
    TableTemplate.Boxes boxes =
        new TableTemplate.Boxes(
            block.requiredText("label"),
            whole(block, "most", MOST_SPANNED),
            block.requiredRawText("count"));
    block.done();
    return boxes;
  }

  private static List<ColumnTemplate> columns(Block block, List<Block> named) {
    List<ColumnTemplate> columns = new ArrayList<>();
    block.items("columns").forEach(node -> readColumn(node, block.scope(), named, columns));
    return columns;
  }

  private static void readColumn(
      Node node, Scope scope, List<Block> named, List<ColumnTemplate> columns) {
    Block block = new Block(node, scope, "column");
    if (block.firstKey().equals("each")) {
      Each.expand(block, "columns", (inner, with) -> readColumn(inner, with, named, columns));
    } else {
      columns.add(column(block, named));
    }
  }

  private static ColumnTemplate column(Block block, List<Block> named) {
    String name = RowReader.name(block, "column");
    String label = block.requiredText("label");
    String unit = block.requiredUnit();
    ValueFormat format = block.word("format", ValueFormat.NUMBER);
    boolean byRow = !named.isEmpty() && !block.has("formula") && !block.has("text");
    boolean namesRows = byRow && format == ValueFormat.CODE && !block.has("words");
    ColumnTemplate column =
        new ColumnTemplate(
            name,
            label,
            unit,
            format,
            namesRows ? List.of() : formulas(block, name, format, byRow ? named : List.of()),
            block.rawText("text").map(text -> WordingReader.read(text, block.scope())),
            namesRows ? CodeWordReader.ofRows(named, name) : RowReader.words(block, format),
            block.requiredText("note"),
            block.has("size")
                ? block.word("size", ColumnTemplate.Size.USUAL)
                : ColumnTemplate.Size.USUAL,
            block.has("span") ? whole(block, "span", MOST_SPANNED) : 1,
            RowReader.guard(block, "none"),
            block.position());
    block.done();
    return column;
  }

  private static List<FormulaText> formulas(
      Block column, String name, ValueFormat format, List<Block> named) {
    if (column.has("text")) {
      return List.of(FormulaText.NONE);
    }
    return named.isEmpty()
        ? List.of(RowReader.formula(column, "formula", format))
        : named.stream().map(row -> RowReader.formula(row, name, format)).toList();
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
