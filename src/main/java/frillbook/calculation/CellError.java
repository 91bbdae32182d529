package frillbook.calculation;

/**
 * The value of a cell whose formula failed.
 *
 * @param text as a spreadsheet shows it: {@code #DIV/0!}
 */
public record CellError(String text) {
  @Override
  public String toString() {
    return text;
  }
}
