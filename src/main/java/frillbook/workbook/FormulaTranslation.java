package frillbook.workbook;

import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.look.WorkbookSetting;
import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.template.CheckTemplate;
import frillbook.template.ColumnTemplate;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.Phrase;
import frillbook.template.Phrases;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WordingText;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import frillbook.wording.CodeWords;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellReference;

/** Turns a template's formulas into those of a workbook, guards and blanks included. */
public final class FormulaTranslation {
  /**
   * A row of a table.
   *
   * @param number of the data, from 1
   * @param sheetRow from 0
   * @param sheetColumn of the table's first one, from 0
   */
  record Row(TableTemplate table, int number, int sheetRow, int sheetColumn) {
    /** Where its cell in that column of the table stands, counted from 0. */
    String address(int column, int step) {
      int place = sheetColumn + table.place(column);
      return new CellReference(sheetRow + step, place, false, true).formatAsString();
    }
  }

  /** Excel takes 255 characters between two quotation marks; kept well under. */
  private static final int LONGEST_TEXT = 240;

  /** Rows of a table in which a number is shorter than counting. */
  private static final int FEW = 8;

  private static final String CM_PER_INCH = "2.54";

  private final WorkbookSetting setting;
  private final CodeWords words;
  private final Phrases phrases;
  private final SheetPlaces places;

  FormulaTranslation(WorkbookSetting setting, Form form, SheetPlaces places) {
    this.setting = setting;
    this.places = places;
    this.words = form.vocabulary().words();
    this.phrases = form.phrases();
  }

  String line(LineTemplate line) {
    String said =
        line.text()
            .map(this::worded)
            .or(() -> line.flag().map(this::asked))
            .orElseGet(() -> worded(render(line.formula()), line.words()));
    return guarded(line.guard(), said, "\"\"");
  }

  String sentence(SentenceTemplate sentence) {
    return guarded(sentence.guard(), worded(sentence.text()), "\"\"");
  }

  private String worded(WordingText text) {
    return new WordingFormula(setting, words).of(text.wording());
  }

  /** Cells hold words: the one place where a formula compares one. */
  private String asked(CodeFlag flag) {
    String word = words.shown(flag.input(), flag.code()).toString();
    return "IF(" + flag.input() + "=" + text(word) + ",1,0)";
  }

  /** The word of the code whose number {@code formula} gives; the formula itself without words. */
  private static String worded(String formula, List<CodeWord> words) {
    return words.isEmpty()
        ? formula
        : words.stream()
            .map(each -> text(each.word()))
            .collect(Collectors.joining(",", "CHOOSE(" + formula + ",", ")"));
  }

  /** The value in row {@code number} of an excerpt. */
  static String excerpt(String column, int number, RowTemplate.Excerpt excerpt) {
    return excerpt
        .closeUp()
        .map(
            count ->
                "IF(COUNTIF(%2$s,%3$d)=0,\"\",INDEX(%1$s,MATCH(%3$d,%2$s,0)))"
                    .formatted(column, count, number))
        .orElse("INDEX(" + column + "," + number + ")");
  }

  /** The value of a line or an input in the unit shown beside inches; blank for none. */
  static String converted(String name, Customary unit) {
    return "IF(ISNUMBER(" + name + ")," + name + "*" + number(unit.times()) + ",\"\")";
  }

  /** A line's value in the other length unit, a long one in its long unit. */
  String inOtherUnit(LineTemplate line) {
    String step = setting.unit() == LengthUnit.INCH ? "*" : "/";
    String name = line.name();
    String other = name + step + CM_PER_INCH;
    String beside =
        line.longSaid()
            .map(
                said ->
                    "IF(ROUND("
                        + name
                        + "/"
                        + number(setting.unit().unitsPerLong())
                        + ",6)<1,"
                        + other
                        + ","
                        + said.cell()
                        + ")")
            .orElse(other);
    return "IF(" + name + "=\"\",\"\"," + beside + ")";
  }

  /** 0 where all is well or cannot be judged yet, else the code of the check's level. */
  String fault(CheckTemplate check) {
    String judged = "IF(" + render(check.formula()) + ",0," + check.level().code() + ")";
    return guarded(check.guard(), judged, "0");
  }

  /** The cell of the input {@code name} as it is said; it follows where rows are put in above. */
  private String place(String name) {
    String sheet = places.names().get(name).sheet();
    return text(" (" + sheet + " B") + "&ROW(" + name + ")&\")\"";
  }

  String sentence(CheckTemplate check) {
    String message = worded(check.message());
    String fine =
        guarded(
            check.guard(), text(phrases.say(Phrase.FINE)), text(phrases.say(Phrase.NOT_CHECKED)));
    String said = check.change().map(name -> message + "&" + place(name)).orElse(message);
    return "IF(" + check.name() + "=0," + fine + "," + said + ")";
  }

  /**
   * The formula of a table's cell in column {@code column}, from 0. Where the table has a condition
   * for its rows, the first column decides whether the row is blank, and the others look at it.
   */
  String cell(Row row, int column) {
    TableTemplate table = row.table();
    ColumnTemplate of = table.columns().get(column);
    String formula = guarded(of.guard(), said(of, row), "\"\"");
    if (table.show().isEmpty()) {
      return guarded(table.guard(), formula, "\"\"");
    } else if (column > 0) {
      return "IF(" + row.address(0, 0) + "=\"\",\"\"," + formula + ")";
    }
    String condition = condition(table.show().get(), row, formula);
    return guarded(table.guard(), "IF(" + condition + "," + formula + ",\"\")", "\"\"");
  }

  private String said(ColumnTemplate column, Row row) {
    if (column.namesRows()) {
      return text(column.words().get(row.number() - 1).word());
    }
    return column
        .text()
        .map(
            text -> new WordingFormula(setting, words, name -> inRow(name, row)).of(text.wording()))
        .orElseGet(() -> worded(render(column.formula(row.number()), row), column.words()));
  }

  /** The cell of the same row where {@code name} is a column of its table. */
  private static String inRow(String name, Row row) {
    int column = row.table().indexOf(name);
    return column < 0 ? name : row.address(column, 0);
  }

  /**
   * A row's condition: in place of its first cell stands that one's formula, and where the rows
   * have names, so does any other's, since a blank row has blank cells.
   */
  private String condition(FormulaText show, Row row, String first) {
    return show.render(
        token ->
            token.kind() == FormulaToken.Kind.CELL
                ? inPlace(token, row, first)
                : token(token, Optional.of(row)));
  }

  private String inPlace(FormulaToken token, Row row, String first) {
    int column = row.table().indexOf(token.word());
    if (column == 0) {
      return "(" + first + ")";
    }
    return row.table().named().isEmpty()
        ? token(token, Optional.of(row))
        : "(" + render(row.table().columns().get(column).formula(row.number()), row) + ")";
  }

  private static String guarded(Optional<String> guard, String formula, String otherwise) {
    return guard
        .map(name -> "IF(" + name + "=1," + formula + "," + otherwise + ")")
        .orElse(formula);
  }

  /** {@code formula} outside a table. */
  String render(FormulaText formula) {
    return formula.render(token -> token(token, Optional.empty()));
  }

  private String render(FormulaText formula, Row row) {
    return formula.render(token -> token(token, Optional.of(row)));
  }

  private String token(FormulaToken token, Optional<Row> row) {
    return switch (token.kind()) {
      case CELL -> address(token, row.orElseThrow(), 0);
      case CELL_ABOVE -> "SUM(" + address(token, row.orElseThrow(), -1) + ")";
      case PLACEHOLDER -> number(token, row).orElseGet(() -> fill(token.text(), row));
      case STRING -> fill(token.text(), row);
      case SPACE -> " ";
      default -> token.text();
    };
  }

  /**
   * The number of the row, counted from the header above: the same in every row, so that a long
   * table's formula is stored once, and right when rows are put in above it.
   */
  private static Optional<String> number(FormulaToken token, Optional<Row> row) {
    return row.filter(in -> token.text().equals("{n}") && in.table().rows() > FEW)
        .map(in -> "(ROW()-ROW($A$" + (in.sheetRow() + 1 - in.number()) + "))");
  }

  private static String address(FormulaToken token, Row row, int step) {
    return row.address(row.table().indexOf(token.word()), step);
  }

  private String fill(String text, Optional<Row> row) {
    String filled =
        setting
            .say(text)
            .replace("{cm_per_unit}", number(setting.unit().centimetres()))
            .replace("{units_per_long}", number(setting.unit().unitsPerLong()));
    return row.map(in -> filled.replace("{n}", String.valueOf(in.number()))).orElse(filled);
  }

  /** The same in every locale. */
  public static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** A text as a formula writes it; a long one in parts. */
  static String text(String text) {
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < text.length() || parts.isEmpty(); from += LONGEST_TEXT) {
      String part = text.substring(from, Math.min(text.length(), from + LONGEST_TEXT));
      parts.add("\"" + part.replace("\"", "\"\"") + "\"");
    }
    return String.join("&", parts);
  }
}
