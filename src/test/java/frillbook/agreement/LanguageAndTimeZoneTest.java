package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A machine that is set up elsewhere makes the same file. */
@Isolated("language and time zone hold for the whole process")
final class LanguageAndTimeZoneTest {
  @ParameterizedTest
  @CsvSource({"tr-TR, Pacific/Kiritimati", "de-DE, America/St_Johns", "ar-EG, Asia/Kathmandu"})
  void theBytesDoNotDependOnLanguageOrTimeZone(String language, String zone) {
    byte[] here = PackagedFile.of(Trials.INCH);
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertArrayEquals(here, PackagedFile.made(Trials.INCH));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }
}
