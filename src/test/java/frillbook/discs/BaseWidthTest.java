package frillbook.discs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import frillbook.brief.Brief;
import frillbook.cutting.Fabric;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seams of 1/2 in, selvedges of 1/2 in on either side. */
class BaseWidthTest {
  /**
   * By hand: 18 in is a base of 19 7/8, which 20 7/8 in of fabric hold. 20 3/4 in are 19 3/4
   * usable, two of them less 1 in for the seam 38 1/2. 58 in is a base of 59 ÷ 0.96 = 61 1/2 (to
   * the eighth): 53 + 52 = 105 in two widths, 3 × 31 less two seams = 91 in three, and 2 × 31 1/4
   * less one is 61 1/2 to the hair.
   */
  @ParameterizedTest
  @CsvSource({
    "18,20.875,1,19.875",
    "18,20.75,2,38.5",
    "58,54,2,105",
    "58,32.25,2,61.5",
    "58,32,3,91"
  })
  void widthsAreSewnTogetherUntilABaseFits(
      double diameter, double fabric, int widths, double usable) {
    Brief brief =
        Briefs.inch().with("diameter", diameter).with("base_fabric_width", fabric).brief();
    BaseWidth width = BaseWidth.of(brief, DiscSizes.of(brief), Fabric.of(brief.fabric(), fabric));
    assertEquals(new BaseWidth(widths, usable), width);
  }

  /** By hand: 90 in come apart into three of 30, with two seams between them. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 45", "3, 60"})
  void everyTwoWidthsShareASeam(int widths, double seams) {
    assertEquals(seams, new BaseWidth(widths, 100).seamLength(90));
  }

  /**
   * By hand: without draw-in bases and backs are 19 in with seams, 18 in without. 2 × 18 1/2 − 1 is
   * 36, 2 × 17 1/2 is 35.
   */
  @ParameterizedTest
  @CsvSource({"0.5,20,1,19", "0.5,19.5,2,36", "0,18.5,2,35"})
  void seamsTakeTheirAllowanceTwice(double seam, double fabric, int widths, double usable) {
    Brief brief =
        Briefs.inch()
            .with("draw_in", 0)
            .with("seam_allowance", seam)
            .with("base_fabric_width", fabric)
            .brief();
    BaseWidth width = BaseWidth.of(brief, DiscSizes.of(brief), Fabric.of(brief.fabric(), fabric));
    assertEquals(new BaseWidth(widths, usable), width);
  }
}
