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

  /** Excel takes 8192 characters in a formula. */
  public static final int LONGEST = 8_000;

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
    Matcher placeholder = PLACEHOLDER.matcher(value);
    Replacement replacement = new Replacement(this);
    while (placeholder.find() && replacement.length() <= LONGEST) {
      String put = values.get(placeholder.group(1));
      if (put != null) {
        replacement.put(put, placeholder.start(), placeholder.end());
      }
    }
    return replacement.done();
  }

  /** A text in the making, in which the places keep step with the characters. */
  private static final class Replacement {
    private final SourceText from;
    private final StringBuilder text = new StringBuilder();
    private int[] places;
    private int done;

    Replacement(SourceText from) {
      this.from = from;
      this.places = new int[from.columns.length];
    }

    int length() {
      return text.length();
    }

    /** Puts {@code words} in place of what stands from…to. */
    void put(String words, int start, int end) {
      copy(start);
      int begun = text.length();
      text.append(words);
      makeRoom();
      Arrays.fill(places, begun, text.length(), from.columns[start]);
      done = end;
    }

    private void copy(int end) {
      int begun = text.length();
      text.append(from.value, done, end);
      makeRoom();
      System.arraycopy(from.columns, done, places, begun, end - done);
    }

    private void makeRoom() {
      if (places.length < text.length()) {
        places = Arrays.copyOf(places, 2 * text.length());
      }
    }

    SourceText done() {
      copy(from.value.length());
      return new SourceText(text.toString(), from.start, Arrays.copyOf(places, text.length()));
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
