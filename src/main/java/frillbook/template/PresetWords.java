package frillbook.template;

import frillbook.measure.LengthUnit;

/**
 * The words an input has until a person changes them.
 *
 * @param inch in an inch workbook
 * @param cm in a cm workbook
 */
public record PresetWords(String inch, String cm) {
  /** Of an input that holds no words. */
  public static final PresetWords NONE = new PresetWords("", "");

  /** The same in both. */
  public static PresetWords both(String words) {
    return new PresetWords(words, words);
  }

  String in(LengthUnit unit) {
    return unit == LengthUnit.INCH ? inch : cm;
  }
}
