package frillbook.press;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** XML being written, in UTF-8. */
final class XmlBuffer {
  private byte[] bytes = new byte[1 << 19];
  private int size;

  byte[] bytes() {
    return bytes;
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  /** Takes {@code text} from {@code from} to before {@code to}, as it is. */
  void copy(byte[] text, int from, int to) {
    room(to - from);
    System.arraycopy(text, from, bytes, size, to - from);
    size += to - from;
  }

  /** Markup: characters of ASCII, as they are. */
  @SuppressWarnings("deprecation")
  void markup(String ascii) {
    room(ascii.length());
    // Takes the lower byte of each character, which is all there is of it.
    ascii.getBytes(0, ascii.length(), bytes, size);
    size += ascii.length();
  }

  /** Words as the content of an element. */
  void words(String words) {
    for (int index = 0; index < words.length(); index++) {
      char letter = words.charAt(index);
      if (letter == '&') {
        markup("&amp;");
      } else if (letter == '<') {
        markup("&lt;");
      } else if (letter == '>') {
        markup("&gt;");
      } else if (letter < 0x80) {
        room(1);
        bytes[size++] = (byte) letter;
      } else {
        index = beyondAscii(words, index);
      }
    }
  }

  /** The last index of the letters taken. */
  private int beyondAscii(String words, int from) {
    int to = from + 1;
    while (to < words.length() && words.charAt(to) >= 0x80) {
      to++;
    }
    byte[] letters = words.substring(from, to).getBytes(StandardCharsets.UTF_8);
    copy(letters, 0, letters.length);
    return to - 1;
  }

  /** A whole number without a sign. */
  void digits(long number) {
    int length = 1;
    for (long rest = number / 10; rest > 0; rest /= 10) {
      length++;
    }
    room(length);
    size += length;
    long rest = number;
    for (int place = size - 1; place >= size - length; place--) {
      bytes[place] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
  }

  private void room(int more) {
    if (size + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
    }
  }
}
