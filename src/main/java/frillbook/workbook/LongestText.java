package frillbook.workbook;

import frillbook.wording.Wording;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The longest text a sentence can become, so that its row has room for it. */
final class LongestText {
  /** Room for a number or a word whose length is not known. */
  private static final String SOME_VALUE = "00000000";

  private static final String SOME_LONG_LENGTH = "00 yd 00 00/00 in";

  /** Room for two lines of a person's own words. */
  private static final String SOME_WORDS = "A word or so. ".repeat(8);

  private LongestText() {}

  static String of(Wording wording) {
    return wording.parts().stream().map(LongestText::of).collect(Collectors.joining());
  }

  private static String of(Wording.Part part) {
    if (part instanceof Wording.Words words) {
      return words.text();
    } else if (part instanceof Wording.Choice choice) {
      return Stream.concat(
              choice.cases().stream().map(each -> of(each.wording())),
              Stream.of(of(choice.other())))
          .reduce("", LongestText::longer);
    }
    if (part instanceof Wording.Measure measure && measure.isLong()) {
      return SOME_LONG_LENGTH;
    }
    boolean words = part instanceof Wording.Text text && text.name().endsWith("_words");
    return words ? SOME_WORDS : SOME_VALUE;
  }

  private static String longer(String one, String two) {
    return one.length() >= two.length() ? one : two;
  }
}
