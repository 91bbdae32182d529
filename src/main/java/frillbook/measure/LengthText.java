package frillbook.measure;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as people write it: {@code 45cm}, {@code 18 in}, {@code 1/2in}, {@code 15 3/4 in},
 * {@code 0.5m}, {@code 1 1/2 yd}. Without a unit it is in the unit of the brief.
 */
public final class LengthText {
  private static final Pattern FORM =
      Pattern.compile(
          "(?:(\\d+(?:\\.\\d+)?|\\.\\d+)(?![\\d/]))?\\s*(?:(\\d+)/(\\d+))?\\s*([a-z]*|\"|')");

  private static final Pattern ONE_SIGN = Pattern.compile("[\u00BC-\u00BE\u2150-\u215E]");

  private static final Map<String, Double> CENTIMETRES =
      Map.of("mm", 0.1, "cm", 1.0, "m", 100.0, "in", 2.54, "ft", 30.48, "yd", 91.44);

  /** What else people write for a unit. */
  private static final Map<String, String> SYMBOLS =
      Map.ofEntries(
          Map.entry("\"", "in"),
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("'", "ft"),
          Map.entry("foot", "ft"),
          Map.entry("feet", "ft"),
          Map.entry("yard", "yd"),
          Map.entry("yards", "yd"),
          Map.entry("yds", "yd"),
          Map.entry("millimetres", "mm"),
          Map.entry("millimeters", "mm"),
          Map.entry("centimetre", "cm"),
          Map.entry("centimetres", "cm"),
          Map.entry("centimeter", "cm"),
          Map.entry("centimeters", "cm"),
          Map.entry("metre", "m"),
          Map.entry("metres", "m"),
          Map.entry("meter", "m"),
          Map.entry("meters", "m"));

  /** The forms a length may take, for messages. */
  public static final String EXAMPLES = "45cm, 18 in, 1/2in, 15 3/4 in, 0.5m";

  private LengthText() {}

  /** The length in {@code unit}; empty where {@code text} is no length. */
  public static Optional<Double> parse(String text, LengthUnit unit) {
    Matcher form = FORM.matcher(plain(text));
    if (!form.matches() || form.group(1) == null && form.group(2) == null) {
      return Optional.empty();
    }
    return number(form).flatMap(number -> inUnit(number, form.group(4), unit));
  }

  /** In small letters, with plain marks for inches and feet, and fractions of several signs. */
  private static String plain(String text) {
    return ONE_SIGN
        .matcher(text.strip().toLowerCase(Locale.ROOT))
        .replaceAll(sign -> " " + Normalizer.normalize(sign.group(), Normalizer.Form.NFKC))
        .replace('\u2044', '/')
        .replaceAll("[\u201D\u2033]|''", "\"")
        .replaceAll("[\u2019\u2032]", "'")
        .strip();
  }

  private static Optional<Double> number(Matcher form) {
    double whole = form.group(1) == null ? 0 : Double.parseDouble(form.group(1));
    if (form.group(2) == null) {
      return Optional.of(whole);
    }
    double below = Double.parseDouble(form.group(3));
    boolean mixed = form.group(1) != null && form.group(1).contains(".");
    return below == 0 || mixed
        ? Optional.empty()
        : Optional.of(whole + Double.parseDouble(form.group(2)) / below);
  }

  /** A unit that is the brief's own leaves the number as it was typed. */
  private static Optional<Double> inUnit(double number, String typed, LengthUnit unit) {
    String symbol = SYMBOLS.getOrDefault(typed, typed);
    if (symbol.isEmpty() || symbol.equals(unit.symbol())) {
      return Optional.of(number);
    }
    return Optional.ofNullable(CENTIMETRES.get(symbol))
        .map(centimetres -> number * centimetres / unit.centimetres());
  }
}
