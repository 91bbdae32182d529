package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** LibreOffice Calc calculates the workbook. */
final class LibreOfficeTest extends OtherEngineTest {
  private static final int RANDOM_BRIEFS = 30;
  private static final int EVERY_NTH_EDGE = 45;
  private static final int EVERY_NTH_QUOTIENT = 15;
  private static final int EVERY_NTH_SPECIAL = 14;

  @Override
  Calculator calculator(Path printed) {
    return new LibreOffice(printed);
  }

  @Override
  List<TrialBrief> briefs() {
    return Sample.of(all(), 11);
  }

  private static List<TrialBrief> all() {
    return Stream.of(
            RandomBriefs.of(Trials.TEMPLATE, RANDOM_BRIEFS).stream(),
            some(EdgeBriefs.of(Trials.TEMPLATE), EVERY_NTH_EDGE),
            some(WholeQuotients.of(Trials.TEMPLATE), EVERY_NTH_QUOTIENT),
            some(PlainBriefs.of(Trials.TEMPLATE), EVERY_NTH_SPECIAL),
            ClearedTexts.byHalves(Trials.CM),
            Stream.of(SentencesTest.awkward()),
            FailingChecksTest.briefs())
        .flatMap(kind -> kind)
        .toList();
  }

  @Override
  int everyNthUnusable() {
    return 41;
  }

  @Test
  void thereAreSixtyBriefsAndMore() {
    assertTrue(all().size() >= 60, all().size() + " briefs");
  }
}
