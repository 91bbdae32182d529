package frillbook;

import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;

/**
 * A machine that is set up for another place. It is so for the whole process, so a class of tests
 * that uses this must run alone.
 */
public final class Elsewhere {
  private Elsewhere() {}

  /** What comes of it where that language is spoken. */
  public static <T> T in(String language, Supplier<T> work) {
    return in(language, TimeZone.getDefault().getID(), work);
  }

  /** What comes of it where that language is spoken and that time holds. */
  public static <T> T in(String language, String zone, Supplier<T> work) {
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    Locale.setDefault(Locale.forLanguageTag(language));
    TimeZone.setDefault(TimeZone.getTimeZone(zone));
    try {
      return work.get();
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }
}
