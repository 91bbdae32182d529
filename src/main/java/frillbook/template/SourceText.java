package frillbook.template;

import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A text from a template that knows where each of its characters was written.
 *
 * <p>The places stay right when a placeholder is replaced: every character of the replacement
 * points to the placeholder's brace. Where a text is folded over several lines, or escaped in a way
 * that is not followed, every character points to the text's beginning.
 */
final class SourceText {
  /** A word in braces, such as {@code {unit}}. */
  static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z_]*)}");

  /** Excel takes 8192 characters in a formula. */
  static final int LONGEST = 8_000;

  private final String value;
  private final Position start;
  private final int[] columns;

  private SourceText(String value, Position start, int[] columns) {
    this.value = value;
    this.start = start;
    this.columns = columns;
  }

  /**
   * @param columns for each character of {@code value}, how many columns it stands to the right of
   *     {@code start}
   */
  static SourceText of(String value, Position start, int[] columns) {
    return new SourceText(value, start, columns);
  }

  /** A text all of whose characters are said to stand at {@code start}. */
  static SourceText at(Position start, String value) {
    return new SourceText(value, start, new int[value.length()]);
  }

  String value() {
    return value;
  }

  boolean isEmpty() {
    return value.isEmpty();
  }

  Position position() {
    return at(0);
  }

  /** Where character {@code offset} was written; past the end, where the last one was. */
  Position at(int offset) {
    if (columns.length == 0) {
      return start;
    }
    return start.right(columns[Math.min(offset, columns.length - 1)]);
  }

  /** The text with each placeholder that has a value replaced by it. */
  SourceText replace(Map<String, String> values) {
    if (values.isEmpty()) {
      return this;
    }
    StringBuilder text = new StringBuilder();
    IntStream.Builder places = IntStream.builder();
    int done = 0;
    Matcher placeholder = PLACEHOLDER.matcher(value);
    while (placeholder.find() && text.length() <= LONGEST) {
      String replacement = values.get(placeholder.group(1));
      if (replacement != null) {
        text.append(value, done, placeholder.start()).append(replacement);
        Arrays.stream(columns, done, placeholder.start()).forEach(places);
        replacement.chars().map(letter -> columns[placeholder.start()]).forEach(places);
        done = placeholder.end();
      }
    }
    text.append(value, done, value.length());
    Arrays.stream(columns, done, columns.length).forEach(places);
    return new SourceText(text.toString(), start, places.build().toArray());
  }

  @Override
  public String toString() {
    return value;
  }
}
