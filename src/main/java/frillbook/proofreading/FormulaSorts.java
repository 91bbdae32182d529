package frillbook.proofreading;

import frillbook.formula.FormulaNode;
import frillbook.formula.FormulaText;
import frillbook.formula.FormulaToken;
import frillbook.formula.FunctionShape;
import frillbook.formula.Meaning;
import frillbook.formula.PortableFunctions;
import frillbook.formula.Sort;
import frillbook.source.Mistakes;
import java.util.List;
import java.util.Set;

/**
 * Whether a formula takes numbers where it needs numbers, and single cells where it needs single
 * cells.
 *
 * <p>A whole column is one where it is worked out row by row, within SUMPRODUCT, or where a
 * function takes it as it is. Anywhere else spreadsheets pick a cell of it, each another one.
 */
final class FormulaSorts {
  private static final Set<String> ARITHMETIC = Set.of("+", "-", "*", "/", "^", "%");

  private final NameMeanings names;
  private final SortMistakes mistakes;

  private FormulaSorts(FormulaText formula, NameMeanings names, Mistakes mistakes) {
    this.names = names;
    this.mistakes = new SortMistakes(formula, mistakes);
  }

  /** Tells where {@code root}, the parts of {@code formula}, mixes what does not go together. */
  static void check(
      FormulaText formula, FormulaNode root, Wanted wanted, NameMeanings names, Mistakes mistakes) {
    FormulaSorts sorts = new FormulaSorts(formula, names, mistakes);
    Meaning given = sorts.one(root, false);
    wanted.objection(given).ifPresent(sorts.mistakes::result);
  }

  /** What {@code node} stands for; {@code byRow} where whole columns are worked out row by row. */
  private Meaning of(FormulaNode node, boolean byRow) {
    if (node instanceof FormulaNode.Value value) {
      return value(value.token());
    } else if (node instanceof FormulaNode.Sign sign) {
      return new Meaning(Set.of(Sort.NUMBER), number(sign.of(), sign.token(), byRow).several());
    } else if (node instanceof FormulaNode.Operation operation) {
      return operation(operation, byRow);
    } else if (node instanceof FormulaNode.Call call) {
      return PortableFunctions.shape(call.token().text())
          .map(shape -> call(call, shape, byRow))
          .orElse(Meaning.UNKNOWN);
    }
    return Meaning.UNKNOWN;
  }

  private Meaning value(FormulaToken token) {
    return switch (token.kind()) {
      case STRING -> token.text().equals("\"\"") ? Meaning.UNKNOWN : Meaning.one(Sort.TEXT);
      case NUMBER, PLACEHOLDER -> Meaning.one(Sort.NUMBER);
      case LOGICAL -> Meaning.one(Sort.TRUTH);
      case NAME -> names.named(token.text());
      case CELL, CELL_ABOVE -> names.cell(token.word());
      default -> Meaning.UNKNOWN;
    };
  }

  private Meaning operation(FormulaNode.Operation operation, boolean byRow) {
    List<FormulaToken> operators = operation.operators();
    boolean arithmetic = ARITHMETIC.contains(operators.get(0).text());
    boolean several = false;
    for (int i = 0; i < operation.operands().size(); i++) {
      FormulaNode operand = operation.operands().get(i);
      FormulaToken operator = operators.get(Math.max(0, i - 1));
      Meaning meaning = arithmetic ? number(operand, operator, byRow) : one(operand, byRow);
      several = several || meaning.several();
    }
    return new Meaning(Set.of(result(operators.get(0))), several);
  }

  private static Sort result(FormulaToken operator) {
    if (operator.text().equals("&")) {
      return Sort.TEXT;
    }
    return ARITHMETIC.contains(operator.text()) ? Sort.NUMBER : Sort.TRUTH;
  }

  private Meaning call(FormulaNode.Call call, FunctionShape shape, boolean byRow) {
    Meaning given = Meaning.UNKNOWN;
    boolean several = false;
    for (int i = 0; i < call.arguments().size() && !shape.takes().isEmpty(); i++) {
      FunctionShape.Takes takes = shape.takes(i);
      Meaning argument = argument(call, i, takes, byRow && !shape.handsOn());
      if (takes == FunctionShape.Takes.GIVEN) {
        given = given.or(argument);
      } else if (takes == FunctionShape.Takes.GIVEN_OF) {
        given = given.or(argument.single());
      } else if (!takes.takesColumns()) {
        several = several || argument.several();
      }
    }
    Set<Sort> sorts = shape.gives().map(Set::of).orElse(given.sorts());
    return new Meaning(sorts, several || given.several());
  }

  private Meaning argument(
      FormulaNode.Call call, int index, FunctionShape.Takes takes, boolean byRow) {
    FormulaNode node = call.arguments().get(index);
    Meaning argument = taken(node, takes, byRow);
    if (takes.isNumber() && argument.mayBe(Sort.TEXT)) {
      mistakes.textAsNumber(node, call.token());
    } else if (takes.isTruth() && argument.mayBe(Sort.TEXT)) {
      mistakes.textAsTruth(node, call.token());
    }
    return argument;
  }

  private Meaning taken(FormulaNode node, FunctionShape.Takes takes, boolean byRow) {
    if (takes == FunctionShape.Takes.ROWS) {
      return of(node, true);
    }
    return takes.takesColumns() ? of(node, byRow) : one(node, byRow);
  }

  /** A number, or a column of them. */
  private Meaning number(FormulaNode node, FormulaToken operator, boolean byRow) {
    Meaning meaning = one(node, byRow);
    if (meaning.mayBe(Sort.TEXT)) {
      mistakes.textAsNumber(node, operator);
    }
    return meaning;
  }

  /** One cell, or a column where that is worked out row by row. */
  private Meaning one(FormulaNode node, boolean byRow) {
    Meaning meaning = of(node, byRow);
    if (meaning.several() && !byRow) {
      mistakes.columnAsCell(node, names.isColumn(node.token().text()));
      return meaning.single();
    }
    return meaning;
  }
}
