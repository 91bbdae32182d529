package frillbook.proofreading;

import frillbook.formula.FormulaDepth;
import frillbook.formula.FormulaGrammar;
import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.formula.FormulaTree;
import frillbook.formula.PortableFunctions;
import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.source.SourceText;
import frillbook.template.ColumnTemplate;
import frillbook.template.TableTemplate;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;

/** Whether a formula speaks only of names, columns and functions that exist, and parses. */
public final class FormulaCheck {
  /** What may stand in braces: numbers anywhere, words within quotation marks. */
  private static final Set<String> NUMBERS = Set.of("cm_per_unit", "units_per_long");

  private static final Set<String> WORDS = Set.of("unit", "long_unit");

  /** Excel takes 8192 in a formula, and [a] may become $XFD10000. */
  private static final int LONGEST = 3_000;

  /** Excel's limit for a text in a formula. */
  private static final int LONGEST_TEXT = 255;

  private final Declarations declarations;
  private final Mistakes mistakes;
  private final FormulaGrammar grammar;
  private final NameMeanings meanings;

  FormulaCheck(Declarations declarations, NameMeanings meanings, Mistakes mistakes) {
    this.declarations = declarations;
    this.meanings = meanings;
    this.mistakes = mistakes;
    this.grammar = new FormulaGrammar(declarations::isSeveralCells);
  }

  /** Checks a formula; {@code table} is the table it stands in, if it does. */
  void check(FormulaText formula, Wanted wanted, Optional<TableTemplate> table) {
    formula.tokens().forEach(token -> token(formula, token, table));
    Optional<FormulaToken> tooDeep = FormulaDepth.tooDeep(formula);
    if (tooDeep.isPresent()) {
      FormulaDepth.tell(formula.position(tooDeep.get()), mistakes);
    } else if (formula.toString().length() > LONGEST) {
      tellLength(formula);
    } else if (!formula.tokens().isEmpty() && grammar.check(formula, mistakes)) {
      parts(formula, wanted);
    }
  }

  private void tellLength(FormulaText formula) {
    mistakes.add(
        formula.position(),
        "a formula of " + formula.toString().length() + " characters",
        "at most " + LONGEST,
        "give a part of it a line of its own and use its name");
  }

  private void parts(FormulaText formula, Wanted wanted) {
    FormulaTree.Parts parts = FormulaTree.of(formula);
    if (parts.leftOver().isPresent()) {
      leftOver(formula, parts.leftOver().get());
    } else {
      FormulaSorts.check(formula, parts.root(), wanted, meanings, mistakes);
    }
  }

  private void leftOver(FormulaText formula, FormulaToken token) {
    boolean comma = token.text().equals(",");
    mistakes.add(
        formula.position(token),
        (comma ? "a comma" : "the " + token.text()) + " outside the brackets of a function",
        comma ? "commas only between the arguments of a function" : "one cell or one whole column",
        comma ? "write a decimal point: 2.5 and not 2,5" : "name the column or block");
  }

  private void token(FormulaText formula, FormulaToken token, Optional<TableTemplate> table) {
    switch (token.kind()) {
      case NAME -> name(formula, token);
      case FUNCTION -> function(formula, token);
      case CELL, CELL_ABOVE -> cell(formula, token, table);
      case PLACEHOLDER -> placeholder(formula, token, token.text(), table);
      case STRING -> string(formula, token, table);
      default -> {
        // Numbers and symbols are the grammar's affair.
      }
    }
  }

  private void name(FormulaText formula, FormulaToken token) {
    if (!declarations.has(token.text())) {
      mistakes.add(
          formula.position(token),
          "the unknown name " + token.text(),
          "the name of an input, line, check, column or block",
          "correct it or add what it names" + near(token));
    }
  }

  /** Looking through all names takes long where thousands are unknown. */
  private String near(FormulaToken token) {
    return mistakes.isFull() ? "" : Nearest.hint(token.text(), declarations.names());
  }

  private void function(FormulaText formula, FormulaToken token) {
    if (!PortableFunctions.names().contains(token.text())) {
      mistakes.add(
          formula.position(token),
          "the function " + token.text(),
          "a function of the portable list, in capital letters",
          "use one that every spreadsheet has"
              + Nearest.hint(token.text(), PortableFunctions.names()));
    }
  }

  private void cell(FormulaText formula, FormulaToken token, Optional<TableTemplate> table) {
    if (table.isEmpty()) {
      mistakes.add(
          formula.position(token),
          token.text() + " outside a table",
          "[column] only in a table's formulas",
          "use a name without brackets");
    } else if (table.get().indexOf(token.word()) < 0) {
      mistakes.add(
          formula.position(token),
          token.text() + ", which is not a column of table " + table.get().name(),
          "a column of the same table",
          "correct it"
              + Nearest.hint(
                  token.word(), table.get().columns().stream().map(ColumnTemplate::name).toList()));
    }
  }

  private void string(FormulaText formula, FormulaToken token, Optional<TableTemplate> table) {
    if (token.text().length() - 2 > LONGEST_TEXT) {
      mistakes.add(
          formula.position(token),
          "a text of " + (token.text().length() - 2) + " characters",
          "at most " + LONGEST_TEXT + " between two quotation marks",
          "shorten it or join two texts with &");
    }
    Matcher placeholder = SourceText.PLACEHOLDER.matcher(token.text());
    while (placeholder.find()) {
      placeholder(formula, token, placeholder.group(), table);
    }
  }

  private void placeholder(
      FormulaText formula, FormulaToken token, String braced, Optional<TableTemplate> table) {
    String word = braced.substring(1, braced.length() - 1);
    boolean isWord = WORDS.contains(word) && token.kind() == FormulaToken.Kind.STRING;
    boolean isRow = word.equals("n") && table.isPresent();
    if (!isWord && !isRow && !NUMBERS.contains(word)) {
      mistakes.add(
          formula.position(token),
          "the unknown placeholder " + braced,
          "{cm_per_unit}, {units_per_long}, in a table {n}, within quotation"
              + " marks {unit} or {long_unit}, or a variable of each",
          "correct or remove it");
    }
  }
}
