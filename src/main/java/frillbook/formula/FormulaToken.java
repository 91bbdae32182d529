package frillbook.formula;

/**
 * One piece of a formula.
 *
 * @param text exactly as written
 * @param offset of its first character within the formula, from 0
 */
public record FormulaToken(Kind kind, String text, int offset) {
  /** What a piece is. */
  public enum Kind {
    /** A text in quotation marks. */
    STRING,
    NUMBER,
    /** TRUE or FALSE. */
    LOGICAL,
    /** An input, a line, a check, a whole column or a block. */
    NAME,
    /** A word with an opening bracket directly behind it; the bracket is a token of its own. */
    FUNCTION,
    /** {@code [column]}: the cell in the same row. */
    CELL,
    /** {@code [column^]}: the cell one row above. */
    CELL_ABOVE,
    /** {@code {n}} and the like. */
    PLACEHOLDER,
    SYMBOL,
    SPACE
  }

  /** The name inside brackets or braces; for any other piece its text. */
  public String word() {
    return switch (kind) {
      case CELL, PLACEHOLDER -> text.substring(1, text.length() - 1);
      case CELL_ABOVE -> text.substring(1, text.length() - 2);
      default -> text;
    };
  }

  /** Whether the piece by itself has a value. */
  boolean isOperand() {
    return switch (kind) {
      case STRING, NUMBER, LOGICAL, NAME, CELL, CELL_ABOVE, PLACEHOLDER -> true;
      case FUNCTION, SYMBOL, SPACE -> false;
    };
  }
}
