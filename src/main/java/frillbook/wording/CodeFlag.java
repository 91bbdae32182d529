package frillbook.wording;

/**
 * Whether an input has a code: 1 where it has, else 0.
 *
 * @param input its name
 */
public record CodeFlag(String input, String code) {
  /** What it is while the input has {@code value}. */
  double of(Object value) {
    return code.equals(value) ? 1 : 0;
  }
}
