package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import org.junit.jupiter.api.Test;

/** What makers expect of a 12 in cushion with rows 1/2 in apart. Common practice, no source. */
class CommonPracticeTest {
  private static final Briefs TWELVE =
      Briefs.inch()
          .with("diameter", 12)
          .with("ring_spacing", .5)
          .with("centre_gap", 0)
          .with("edge_clearance", 0)
          .with("fullness", 3)
          .with("end_allowance", 0)
          .with("matching_discs", 0);

  private static GrainsCompared cutting(Briefs briefs) {
    return Plan.of(briefs.brief()).cutting().orElseThrow();
  }

  private static RowWork rows() {
    return Plan.of(TWELVE.brief()).rows().orElseThrow();
  }

  private static CutTotals cut(Briefs briefs) {
    return cutting(briefs).cut().orElseThrow().total();
  }

  @Test
  void aCordAlongTheRowsMeasuresAbout224Inches() {
    assertEquals(224, rows().rings().stitchedLength(), .02 * 224);
  }

  @Test
  void tripledItTakesAbout672Inches() {
    assertEquals(672, rows().strip().flatLength(), .02 * 672);
  }

  @Test
  void stripsOf86InchesMakeItEightAndACarefulMakerCutsNine() {
    Briefs strips =
        TWELVE
            .with("fabric_width", 86)
            .with("selvage", 0)
            .with("join_finish", "plain")
            .with("join_allowance", .25);
    assertEquals(86, cut(strips).stripLength());
    assertEquals(8, cut(strips).stripCount());
    assertEquals(9, cut(strips.with("spare_strips", 1)).stripCount());
    assertEquals(7, cut(strips.with("spare_strips", 1)).joinCount());
  }

  @Test
  void itIsCutAt13InchesForHalfInchSeams() {
    var discs = Plan.of(TWELVE.brief()).sizes().discs();
    assertEquals(13, discs.backCutDiameter());
  }

  @Test
  void sewingTheRowsDrawsThemInByAboutHalfAnInch() {
    var discs = Plan.of(TWELVE.brief()).sizes().discs();
    assertEquals(.5, discs.baseCutDiameter() - discs.backCutDiameter(), .15);
  }
}
