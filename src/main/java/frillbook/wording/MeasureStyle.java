package frillbook.wording;

import frillbook.measure.LengthUnit;
import frillbook.measure.Scales;
import frillbook.measure.Tape;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a length or a weight is said in a sentence. */
public enum MeasureStyle {
  /** Of a length, the unit left to the sentence: 19 7/8. */
  TAPE("{unit}"),
  /** Of a long one, its units with it: 20 yd 35 3/8 in. */
  LONG_TAPE("{unit}"),
  /** Of a weight in grams, its units with it: 2 lb 3 oz. */
  WEIGHT("g");

  private final String unit;

  MeasureStyle(String unit) {
    this.unit = unit;
  }

  /** That of the values it is for, as templates write it. */
  public String unit() {
    return unit;
  }

  /** The style that a sentence calls {@code word}. */
  public static Optional<MeasureStyle> of(String word) {
    return Arrays.stream(values()).filter(style -> style.word().equals(word)).findFirst();
  }

  /** What a sentence calls it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** {@code value} in the smallest parts that are said of it. */
  public double parts(LengthUnit of, double value) {
    return switch (this) {
      case TAPE, LONG_TAPE -> Tape.parts(of, value);
      case WEIGHT -> Scales.parts(of, value);
    };
  }

  String say(LengthUnit of, double value) {
    return switch (this) {
      case TAPE -> Tape.say(of, value);
      case LONG_TAPE -> Tape.sayLong(of, value);
      case WEIGHT -> Scales.say(of, value);
    };
  }
}
