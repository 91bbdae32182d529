package frillbook.reading;

import frillbook.formula.FormulaLexer;
import frillbook.formula.FormulaText;
import frillbook.formula.NameRules;
import frillbook.source.SourceText;
import frillbook.template.CheckLevel;
import frillbook.template.CheckTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.ValueFormat;
import frillbook.template.WordingText;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the entries of a sheet; the first key of an entry says what it is. */
public final class RowReader {
  private static final String KINDS =
      "section, note, caution, sentence, input, line, flag, check, table, picture, each, input_checks,"
          + " verdict, new_page, said, quote, excerpt, cells, step, beside or glossary";

  private RowReader() {}

  /** Adds what {@code node} describes to {@code rows}: one row, or several for {@code each}. */
  static void read(Node node, Scope scope, List<RowTemplate> rows) {
    Block block = new Block(node, scope, "row");
    switch (block.firstKey()) {
      case "section" -> rows.add(section(block));
      case "note" -> rows.add(note(block));
      case "caution" -> rows.add(caution(block));
      case "sentence" -> rows.add(sentence(block));
      case "input" -> rows.add(InputReader.read(block));
      case "line" -> rows.add(line(block));
      case "flag" -> rows.add(flag(block));
      case "check" -> rows.add(check(block));
      case "table" -> rows.add(TableReader.read(block));
      case "picture" -> rows.add(ChartReader.read(block));
      case "input_checks" -> rows.add(inputChecks(block));
      case "glossary" -> rows.add(glossary(block));
      case "verdict" -> rows.add(verdict(block));
      case "said" -> rows.add(said(block));
      case "new_page" -> rows.add(newPage(block));
      case "quote" -> rows.add(quote(block));
      case "excerpt" -> rows.add(excerpt(block));
      case "cells" -> rows.add(CellRowReader.cells(block));
      case "step" -> rows.add(CellRowReader.step(block));
      case "beside" -> beside(block, rows);
      case "each" -> Each.expand(block, "rows", (inner, with) -> read(inner, with, rows));
      case "" -> {
        // Not a mapping, or an empty one: told already or nothing to read.
      }
      default ->
          scope.tell(
              block.position(),
              "a row beginning with " + block.firstKey(),
              "a row beginning with " + KINDS,
              block.firstKey().equals("chart")
                  ? "write picture: in its place"
                  : "put the key that says what the row is first");
    }
  }

  private static RowTemplate quote(Block block) {
    RowTemplate quote =
        new RowTemplate.Quote(
            FormulaText.name(block.requiredRawText("quote")),
            block.text("label"),
            block.requiredText("note"),
            block.flag("headline"),
            block.position());
    block.done();
    return quote;
  }

  private static RowTemplate excerpt(Block block) {
    RowTemplate excerpt =
        new RowTemplate.Excerpt(
            block.requiredRawText("excerpt"),
            block.texts("columns"),
            block.rawText("close_up"),
            block.position());
    block.done();
    return excerpt;
  }

  private static void beside(Block block, List<RowTemplate> rows) {
    int column = CellRowReader.column(block, "beside");
    List<Node> within = block.items("rows");
    block.done();
    rows.add(new RowTemplate.Beside(column, block.position()));
    within.forEach(node -> read(node, block.scope(), rows));
    rows.add(new RowTemplate.Below(block.position()));
  }

  private static RowTemplate section(Block block) {
    String text = block.requiredText("section");
    block.done();
    return new RowTemplate.Section(text, block.position());
  }

  private static RowTemplate note(Block block) {
    String text = block.requiredText("note");
    block.done();
    return new RowTemplate.Note(text, block.position());
  }

  private static RowTemplate caution(Block block) {
    String text = block.requiredText("caution");
    block.done();
    return new RowTemplate.Caution(text, block.position());
  }

  private static SentenceTemplate sentence(Block block) {
    SentenceTemplate sentence =
        new SentenceTemplate(wording(block, "sentence"), guard(block, "plan_ok"), block.position());
    block.done();
    return sentence;
  }

  private static RowTemplate inputChecks(Block block) {
    List<SourceText> parts = block.texts("input_checks");
    block.done();
    parts.forEach(part -> tellObjection(part, block.scope()));
    return new RowTemplate.InputChecks(
        parts.stream().map(SourceText::value).toList(), block.position());
  }

  private static RowTemplate glossary(Block block) {
    block.flag("glossary");
    block.done();
    return new RowTemplate.Glossary(block.position());
  }

  private static RowTemplate verdict(Block block) {
    block.flag("verdict");
    block.done();
    return new RowTemplate.Verdict(block.position());
  }

  private static RowTemplate said(Block block) {
    block.flag("said");
    block.done();
    return new RowTemplate.Said(block.position());
  }

  private static RowTemplate newPage(Block block) {
    block.flag("new_page");
    block.done();
    return new RowTemplate.NewPage(block.position());
  }

  private static LineTemplate line(Block block) {
    String name = name(block, "line");
    String label = block.requiredText("label");
    String unit = block.requiredUnit();
    ValueFormat format = block.word("format", ValueFormat.NUMBER);
    LineTemplate line =
        new LineTemplate(
            name,
            label,
            unit,
            format,
            block.has("text") ? FormulaText.NONE : formula(block, "formula", format),
            words(block, format),
            block.rawText("text").map(text -> WordingReader.read(text, block.scope())),
            Optional.empty(),
            block.requiredText("note"),
            guard(block, "plan_ok"),
            block.flag("also"),
            block.flag("headline"),
            block.position());
    tellAlso(line, block.scope());
    block.done();
    return line;
  }

  /** The words of a value's codes; none unless its format is code. */
  static List<CodeWord> words(Block block, ValueFormat format) {
    return format == ValueFormat.CODE ? CodeWordReader.read(block, "words") : List.of();
  }

  /** A line that is 1 while an input has a code. */
  private static LineTemplate flag(Block block) {
    String name = name(block, "flag");
    LineTemplate flag =
        new LineTemplate(
            name,
            block.requiredText("label"),
            "-",
            ValueFormat.FLAG,
            FormulaText.NONE,
            List.of(),
            Optional.empty(),
            Optional.of(
                new CodeFlag(
                    block.requiredRawText("input").value(), block.requiredRawText("code").value())),
            block.requiredText("note"),
            Optional.empty(),
            false,
            false,
            block.position());
    block.done();
    return flag;
  }

  private static void tellAlso(LineTemplate line, Scope scope) {
    boolean isLength = line.format().isLength() && line.unit().equals("{unit}");
    if (line.also() && !isLength && line.customary().isEmpty()) {
      scope.tell(
          line.position(),
          "also: true on line " + line.name(),
          "it only on a line of format length or cut with unit {unit}",
          "leave it out or correct format and unit");
    }
  }

  private static CheckTemplate check(Block block) {
    String name = name(block, "check");
    CheckTemplate check =
        new CheckTemplate(
            name,
            block.requiredText("label"),
            block.word("level", CheckLevel.STOP),
            formula(block, "formula"),
            wording(block, "message"),
            block.rawText("change").map(SourceText::value),
            guard(block, "inputs_ok"),
            block.position());
    block.done();
    return check;
  }

  /** The name under {@code key}; told where a spreadsheet would refuse it. */
  static String name(Block block, String key) {
    SourceText name = block.requiredRawText(key);
    block.call(key + " " + name);
    tellObjection(name, block.scope());
    return name.value();
  }

  static void tellObjection(SourceText name, Scope scope) {
    NameRules.objection(name.value())
        .filter(objection -> !name.isEmpty())
        .ifPresent(
            objection ->
                scope.tell(
                    name.position(),
                    "the name " + name + ", which " + objection,
                    "words in small letters joined by _ that no spreadsheet reads otherwise",
                    "choose another name"));
  }

  /** A formula whose texts are shown where it gives words. */
  static FormulaText formula(Block block, String key, ValueFormat format) {
    FormulaText formula = formula(block, key);
    return format == ValueFormat.TEXT ? formula.withTexts(block.scope()::said) : formula;
  }

  static FormulaText formula(Block block, String key) {
    return FormulaLexer.lex(block.requiredRawText(key), block.scope().mistakes());
  }

  static WordingText wording(Block block, String key) {
    return WordingReader.read(block.requiredRawText(key), block.scope());
  }

  static Optional<String> guard(Block block, String preset) {
    String guard = block.rawText("guard").map(SourceText::value).orElse(preset);
    return guard.equals("none") ? Optional.empty() : Optional.of(guard);
  }
}
