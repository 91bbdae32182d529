package frillbook.grains;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Pieces;
import frillbook.strip.Join;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Strips 2 wide, none shorter than 12, seams of 1. */
class GrainStartTest {
  private static GrainStart start(Grain grain, double width, int discs, Join join) {
    Pieces pieces = new Pieces(2, 500, 0, 12, discs, 14, .125);
    return GrainStart.of(grain, new Fabric(width, 1, 4.5), pieces, join);
  }

  /**
   * Across, the shortest strip must fit; along, one strip beside the selvage. On the bias √2 times
   * the width is the longest cut line, and a strip 2 wide loses 2 at either end: √2 × 11.3138 is a
   * hair over 16, √2 × 11.3137 a hair under.
   */
  @ParameterizedTest
  @CsvSource({
    "CROSSWISE,12,true",
    "CROSSWISE,11.999,false",
    "LENGTHWISE,2,true",
    "LENGTHWISE,1.999,false",
    "BIAS,11.3138,true",
    "BIAS,11.3137,false"
  })
  void theFabricMustHoldTheShortestStrip(Grain grain, double width, boolean can) {
    assertEquals(can, start(grain, width, 0, new Join(false, 1, 1)).can());
  }

  /** A disc of 14 on 13 of fabric: it is cut from the base fabric, and the strips from this. */
  @ParameterizedTest
  @EnumSource
  void aDiscWiderThanTheFabricKeepsNoGrainFromBeingCut(Grain grain) {
    assertTrue(start(grain, 13, 1, new Join(false, 1, 1)).can());
  }

  /** 2 × 7 = 14, and half of it is left after joining. */
  @Test
  void aLongSeamMakesTheShortestUsefulStripLonger() {
    assertEquals(new GrainStart(7, 14, false), start(Grain.CROSSWISE, 13, 0, new Join(true, 7, 1)));
    assertEquals(new GrainStart(7, 14, true), start(Grain.CROSSWISE, 14, 0, new Join(true, 7, 1)));
  }

  private static GrainStart useful(double shortest) {
    return new GrainStart(1, shortest, true);
  }

  @Test
  void theLongestOfTheShortestStripsCounts() {
    assertEquals(20, starts(20, 12, 15).longestUseful());
    assertEquals(20, starts(12, 20, 15).longestUseful());
    assertEquals(20, starts(12, 15, 20).longestUseful());
  }

  private static GrainStarts starts(double crosswise, double lengthwise, double bias) {
    return GrainStarts.of(useful(crosswise), useful(lengthwise), useful(bias));
  }

  @Test
  void everyGrainHasItsOwnStart() {
    GrainStarts starts = starts(1, 2, 3);
    assertSame(starts.crosswise(), starts.of(Grain.CROSSWISE));
    assertSame(starts.lengthwise(), starts.of(Grain.LENGTHWISE));
    assertSame(starts.bias(), starts.of(Grain.BIAS));
  }
}
