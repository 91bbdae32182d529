package frillbook.cli;

import frillbook.press.Colour;
import frillbook.source.Nearest;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A colour as it is typed: six hex digits or a colour word of CSS, in capitals or small letters.
 */
final class ColourName implements ITypeConverter<Colour> {
  private static final String WORDS = "colour-words.txt";

  private static final String HEX = "#?[0-9a-fA-F]{6}";

  @Override
  public Colour convert(String typed) {
    if (typed.matches(HEX)) {
      return new Colour(typed.replace("#", "").toUpperCase(Locale.ROOT));
    }
    Map<String, String> words = words();
    String word = typed.toLowerCase(Locale.ROOT);
    if (!words.containsKey(word)) {
      throw new TypeConversionException(
          "found \""
              + typed
              + "\". Write six hex digits, such as B03A5B, or a colour word of CSS, such as teal"
              + Nearest.hint(word, words.keySet()));
    }
    return new Colour(words.get(word));
  }

  /** Every colour word with its colour. */
  static Map<String, String> words() {
    try (InputStream list = ColourName.class.getResourceAsStream(WORDS);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(list, StandardCharsets.US_ASCII))) {
      return lines
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(" "))
          .collect(Collectors.toMap(word -> word[0], word -> word[1]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
