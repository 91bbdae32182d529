package frillbook.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Takes apart a formula whose grammar is known to be right.
 *
 * <p>A spreadsheet knows two operators more than templates do: the colon, which joins two cells to
 * a range, and the comma between ranges outside a function's brackets. They are left over.
 */
public final class FormulaTree {
  /** From what binds least. A sign binds more than any of them. */
  private static final List<Set<String>> RANKS =
      List.of(
          Set.of("=", "<>", "<", ">", "<=", ">="),
          Set.of("&"),
          Set.of("+", "-"),
          Set.of("*", "/"),
          Set.of("^"));

  private static final Set<String> SIGNS = Set.of("+", "-");

  private final List<FormulaToken> tokens;
  private int at;
  private Optional<FormulaToken> leftOver = Optional.empty();

  private FormulaTree(FormulaText formula) {
    this.tokens =
        formula.tokens().stream().filter(token -> token.kind() != FormulaToken.Kind.SPACE).toList();
  }

  /**
   * A formula in its parts.
   *
   * @param leftOver the first piece that no part of it takes
   */
  public record Parts(FormulaNode root, Optional<FormulaToken> leftOver) {}

  /** The parts of a formula, which must not be empty. */
  public static Parts of(FormulaText formula) {
    FormulaTree tree = new FormulaTree(formula);
    FormulaNode root = tree.ranked(0);
    return new Parts(root, tree.leftOver.or(tree::next));
  }

  private Optional<FormulaToken> next() {
    return at < tokens.size() ? Optional.of(tokens.get(at)) : Optional.empty();
  }

  private boolean nextIs(String symbol) {
    return next().filter(token -> token.text().equals(symbol)).isPresent();
  }

  private boolean nextIsOf(Set<String> symbols) {
    return next().filter(token -> symbols.contains(token.text())).isPresent();
  }

  private FormulaNode ranked(int rank) {
    if (rank == RANKS.size()) {
      return signed();
    }
    List<FormulaNode> operands = new ArrayList<>(List.of(ranked(rank + 1)));
    List<FormulaToken> operators = new ArrayList<>();
    while (nextIsOf(RANKS.get(rank))) {
      operators.add(tokens.get(at++));
      operands.add(ranked(rank + 1));
    }
    return operators.isEmpty() ? operands.get(0) : new FormulaNode.Operation(operands, operators);
  }

  private FormulaNode signed() {
    if (nextIsOf(SIGNS)) {
      return new FormulaNode.Sign(tokens.get(at++), signed());
    }
    FormulaNode value = value();
    while (nextIs("%")) {
      value = new FormulaNode.Sign(tokens.get(at++), value);
    }
    return value;
  }

  private FormulaNode value() {
    FormulaToken token = next().orElse(tokens.get(tokens.size() - 1));
    if (token.kind() == FormulaToken.Kind.FUNCTION) {
      at++;
      return new FormulaNode.Call(token, arguments());
    } else if (nextIs("(")) {
      at++;
      FormulaNode inside = ranked(0);
      close();
      return inside;
    } else if (token.isOperand()) {
      at++;
      return new FormulaNode.Value(token);
    }
    return new FormulaNode.Nothing(token);
  }

  private List<FormulaNode> arguments() {
    List<FormulaNode> arguments = new ArrayList<>();
    at++;
    while (!nextIs(")") && next().isPresent()) {
      arguments.add(nextIs(",") ? new FormulaNode.Nothing(tokens.get(at)) : ranked(0));
      if (!nextIs(",")) {
        break;
      }
      at++;
    }
    close();
    return arguments;
  }

  private void close() {
    if (nextIs(")")) {
      at++;
    } else if (leftOver.isEmpty()) {
      leftOver = next();
    }
  }
}
