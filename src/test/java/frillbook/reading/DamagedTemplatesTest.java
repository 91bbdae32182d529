package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.DamagedTemplates;
import frillbook.Sample;
import frillbook.source.Mistake;
import frillbook.source.TemplateException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a person mistypes, the reader accepts it or says where the mistake is. */
final class DamagedTemplatesTest {
  private static final int TRIES = Sample.size(6, 2);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aSlipInOneFileIsAcceptedOrTold(long seed) {
    for (int i = 0; i < TRIES; i++) {
      acceptedOrTold(DamagedTemplates.inOne(seed * 1000 + i), seed * 1000 + i);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5})
  void aSlipInEveryFileIsTold(long seed) {
    int told = 0;
    for (int i = 0; i < TRIES; i++) {
      told += acceptedOrTold(DamagedTemplates.inAll(seed * 1000 + i), seed * 1000 + i) ? 1 : 0;
    }
    assertTrue(told > TRIES / 2, told + " told");
  }

  /** Whether it is told; any other exception than that of mistakes goes on to whoever runs this. */
  private static boolean acceptedOrTold(DamagedTemplates templates, long seed) {
    try {
      TemplateReader.read(templates);
      return false;
    } catch (TemplateException told) {
      assertFalse(told.mistakes().isEmpty(), "seed " + seed);
      told.mistakes().forEach(mistake -> placed(mistake, templates, seed));
      return true;
    }
  }

  private static void placed(Mistake mistake, DamagedTemplates templates, long seed) {
    String which = "seed " + seed + ": " + mistake;
    // A file that a damaged name asks for is told where it is named.
    assertTrue(templates.files().containsKey(mistake.file()), which);
    long lines = templates.files().get(mistake.file()).lines().count();
    assertTrue(mistake.line() >= 1 && mistake.line() <= lines + 1, which);
    assertTrue(mistake.column() >= 1, which);
    assertFalse(mistake.found().isBlank(), which);
    assertFalse(mistake.expected().isBlank(), which);
    assertFalse(mistake.remedy().isBlank(), which);
  }
}
