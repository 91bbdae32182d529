package frillbook.reading;

import frillbook.source.MessageText;
import frillbook.source.SourceText;
import java.util.OptionalInt;

/** Whether a text can stand in a workbook. */
final class TextRules {
  /** In place of a text that is too long to be read. */
  private static final String STAND_IN = "1";

  private TextRules() {}

  /** The text of {@code key}, or a stand-in, and told, where it is too long. */
  static SourceText usable(String key, SourceText text, Scope scope) {
    if (text.value().length() > SourceText.LONGEST) {
      scope.tell(
          text.position(),
          key + " of " + text.value().length() + " characters",
          "at most " + SourceText.LONGEST,
          "shorten it");
      return SourceText.at(text.position(), STAND_IN);
    }
    OptionalInt place = refused(text.value());
    if (place.isPresent()) {
      int character = text.value().codePointAt(place.getAsInt());
      scope.tell(
          text.at(place.getAsInt()),
          "the character " + MessageText.name(character) + " in " + key,
          "characters that a workbook can hold",
          "take it out");
    }
    return text;
  }

  /** Where the first character stands that XML 1.0 has no way to write. */
  private static OptionalInt refused(String text) {
    int at = 0;
    while (at < text.length()) {
      int character = text.codePointAt(at);
      if (!isCharacter(character)) {
        return OptionalInt.of(at);
      }
      at += Character.charCount(character);
    }
    return OptionalInt.empty();
  }

  private static boolean isCharacter(int character) {
    return character >= ' '
        ? character < 0xD800 || character > 0xDFFF && character < 0xFFFE || character > 0xFFFF
        : character == '\t' || character == '\n' || character == '\r';
  }
}
