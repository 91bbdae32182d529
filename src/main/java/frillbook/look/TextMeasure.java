package frillbook.look;

/**
 * How much room a text takes in Arial, or in Liberation Sans, which has the same widths.
 *
 * <p>Row heights are computed here because a spreadsheet program does not grow a row for merged
 * cells. The answer errs on the generous side: a little air under a text is better than a line cut
 * off.
 */
public final class TextMeasure {
  /** Widths of the characters from space to tilde in thousandths of the letter size (AFM). */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  private static final int OTHER_WIDTH = 600;
  private static final double BOLD = 1.08;

  /** Programs differ in how they round widths; this much of a line is left free. */
  private static final double SAFETY = 1.05;

  private static final double LINE_HEIGHT = 1.27;

  /** Above and under one line, and under more, which programs set further apart. */
  private static final double PADDING_OF_ONE = 2.5;

  private static final double PADDING = 6;

  private TextMeasure() {}

  /** Height in points of a row in which {@code text} is wrapped to {@code width} points. */
  public static double height(String text, double width, double size, boolean bold) {
    int lines = lines(text, width, size, bold);
    return lines * size * LINE_HEIGHT + (lines == 1 ? PADDING_OF_ONE : PADDING);
  }

  /** How many lines the text fills; at least 1. A word wider than the line is broken. */
  static int lines(String text, double width, double size, boolean bold) {
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      lines += paragraphLines(paragraph, width / SAFETY, size * (bold ? BOLD : 1));
    }
    return lines;
  }

  private static int paragraphLines(String paragraph, double width, double size) {
    int lines = 1;
    double used = 0;
    for (String word : paragraph.split("(?<= )")) {
      double bare = width(word.stripTrailing(), size);
      if (used > 0 && used + bare > width) {
        lines++;
        used = 0;
      }
      lines += (int) Math.max(0, Math.ceil(bare / width) - 1);
      used += width(word, size);
    }
    return lines;
  }

  /** Width in points of a text on one line. */
  public static double width(String text, double size) {
    return text.chars().map(TextMeasure::width).sum() * size / 1000;
  }

  private static int width(int character) {
    int index = character - ' ';
    return index >= 0 && index < WIDTHS.length ? WIDTHS[index] : OTHER_WIDTH;
  }
}
