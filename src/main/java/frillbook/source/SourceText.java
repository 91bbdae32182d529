package frillbook.source;

import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text from a template that knows where each of its characters was written.
 *
 * <p>The places stay right when a placeholder is replaced: every character of the replacement
 * points to the placeholder's brace. Where a text is folded over several lines, or escaped in a way
 * that is not followed, every character points to the text's beginning.
 */
public final class SourceText {
  /** A word in braces, such as {@code {unit}}. */
  public static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z_]*)}");

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
  public static SourceText at(Position start, String value) {
    return new SourceText(value, start, new int[value.length()]);
  }

  public String value() {
    return value;
  }

  public boolean isEmpty() {
    return value.isEmpty();
  }

  public Position position() {
    return at(0);
  }

  /** Where character {@code offset} was written; past the end, where the last one was. */
  public Position at(int offset) {
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
    int[] places = new int[0];
    int done = 0;
    Matcher placeholder = PLACEHOLDER.matcher(value);
    while (placeholder.find()) {
      String replacement = values.get(placeholder.group(1));
      if (replacement != null) {
        text.append(value, done, placeholder.start()).append(replacement);
        places = join(places, Arrays.copyOfRange(columns, done, placeholder.start()));
        places = join(places, repeated(columns[placeholder.start()], replacement.length()));
        done = placeholder.end();
      }
    }
    text.append(value, done, value.length());
    places = join(places, Arrays.copyOfRange(columns, done, columns.length));
    return new SourceText(text.toString(), start, places);
  }

  private static int[] repeated(int column, int times) {
    int[] columns = new int[times];
    Arrays.fill(columns, column);
    return columns;
  }

  private static int[] join(int[] left, int[] right) {
    int[] both = Arrays.copyOf(left, left.length + right.length);
    System.arraycopy(right, 0, both, left.length, right.length);
    return both;
  }

  @Override
  public String toString() {
    return value;
  }
}
