package frillbook.proofreading;

import frillbook.formula.FormulaNode;
import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.source.Mistakes;

/** What is said of a formula that mixes what does not go together. */
final class SortMistakes {
  private final FormulaText formula;
  private final Mistakes mistakes;

  SortMistakes(FormulaText formula, Mistakes mistakes) {
    this.formula = formula;
    this.mistakes = mistakes;
  }

  void textAsNumber(FormulaNode node, FormulaToken user) {
    boolean isFunction = user.kind() == FormulaToken.Kind.FUNCTION;
    mistakes.add(
        formula.position(node.token()),
        text(node) + " where " + user.text() + " needs a number",
        isFunction ? "numbers in the brackets of " + user.text() : "a number on either side",
        "use a number, or compare the text with another or join them with &");
  }

  void textAsTruth(FormulaNode node, FormulaToken user) {
    mistakes.add(
        formula.position(node.token()),
        text(node) + " where " + user.text() + " needs a condition",
        Wanted.A_TRUTH,
        Wanted.COMPARE);
  }

  /**
   * @param inTable whether it is a column of a table and no other several cells
   */
  void columnAsCell(FormulaNode node, boolean inTable) {
    String token = node.token().text();
    boolean call = node instanceof FormulaNode.Call;
    mistakes.add(
        formula.position(node.token()),
        (call ? "a whole column that " + token + " gives" : "all cells of " + token)
            + " where one cell is meant",
        "a single cell, or a function that takes a column",
        "take one of them with INDEX, or all with SUM, MAX or SUMPRODUCT"
            + (inTable ? "; within the same table write [" + token + "]" : ""));
  }

  void result(Wanted.Objection objection) {
    mistakes.add(formula.position(), objection.found(), objection.expected(), objection.remedy());
  }

  private static String text(FormulaNode node) {
    FormulaToken token = node.token();
    if (node instanceof FormulaNode.Operation) {
      return "a text joined with " + token.text();
    }
    boolean call = node instanceof FormulaNode.Call;
    return call ? "a text that " + token.text() + " gives" : "the text " + token.text();
  }
}
