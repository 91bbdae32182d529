package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import frillbook.Elsewhere;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A machine that is set up elsewhere makes the same file. */
@Isolated("language and time zone hold for the whole process")
final class LanguageAndTimeZoneTest {
  @ParameterizedTest
  @CsvSource({"tr-TR, Pacific/Kiritimati", "de-DE, America/St_Johns", "ar-EG, Asia/Kathmandu"})
  void theBytesDoNotDependOnLanguageOrTimeZone(String language, String zone) {
    byte[] there = Elsewhere.in(language, zone, () -> PackagedFile.made(Trials.INCH));
    assertArrayEquals(PackagedFile.of(Trials.INCH), there);
  }
}
