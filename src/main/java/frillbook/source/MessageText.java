package frillbook.source;

/** Words from a template within a message: short, and with every character to be seen. */
public final class MessageText {
  /** Longer than any message that quotes a name or two. */
  private static final int LONGEST = 300;

  /** What is left of a longer one: its beginning and its end. */
  private static final int BEGINNING = 200;

  private static final int END = 60;

  private MessageText() {}

  public static String of(String text) {
    return cut(text)
        .codePoints()
        .collect(StringBuilder::new, MessageText::append, StringBuilder::append)
        .toString();
  }

  private static String cut(String text) {
    return text.length() <= LONGEST
        ? text
        : text.substring(0, BEGINNING) + " … " + text.substring(text.length() - END);
  }

  private static void append(StringBuilder said, int character) {
    if (isUnseen(character)) {
      said.append(name(character));
    } else {
      said.appendCodePoint(character);
    }
  }

  /** As Unicode names a character: U+0000. */
  public static String name(int character) {
    return String.format("U+%04X", character);
  }

  private static boolean isUnseen(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
