package frillbook.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.TypeConversionException;

/** Options that take one of a few words. */
final class Word {
  private Word() {}

  /**
   * The constant that {@code text} names in small or capital letters.
   *
   * @param others what else they are called, in small letters
   */
  static <E extends Enum<E>> E of(Class<E> type, String text, Map<String, E> others) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> constant.name().equalsIgnoreCase(text))
        .findFirst()
        .or(() -> Optional.ofNullable(others.get(text.toLowerCase(Locale.ROOT))))
        .orElseThrow(
            () -> new TypeConversionException("found \"" + text + "\". Write " + words(type)));
  }

  private static String words(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(constant -> constant.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(" or "));
  }
}
