package frillbook.formula;

import java.util.List;

/** A formula taken apart: what is worked out, and of what. */
public sealed interface FormulaNode {
  /** The piece of the formula that stands for it in a message. */
  FormulaToken token();

  /** A text, a number, a name or a cell. */
  record Value(FormulaToken token) implements FormulaNode {}

  /** A function of its arguments. */
  record Call(FormulaToken token, List<FormulaNode> arguments) implements FormulaNode {}

  /** A sign before a value, or the % behind it. */
  record Sign(FormulaToken token, FormulaNode of) implements FormulaNode {}

  /**
   * Values with operators of one rank between them.
   *
   * @param operators one fewer than there are operands
   */
  record Operation(List<FormulaNode> operands, List<FormulaToken> operators)
      implements FormulaNode {
    @Override
    public FormulaToken token() {
      return operators.get(0);
    }
  }

  /** An argument that was left out. */
  record Nothing(FormulaToken token) implements FormulaNode {}
}
