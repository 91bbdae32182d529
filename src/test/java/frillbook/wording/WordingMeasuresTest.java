package frillbook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Lengths and weights within sentences. */
class WordingMeasuresTest {
  private static final Wording.Measure STRAP = new Wording.Measure("strap", MeasureStyle.TAPE);

  private static final Wording.Measure ROLL = new Wording.Measure("roll", MeasureStyle.LONG_TAPE);

  private static final Wording.Measure BAG = new Wording.Measure("bag", MeasureStyle.WEIGHT);

  private static final Map<String, Object> VALUES =
      Map.of("strap", 19.875, "roll", 755.375, "bag", 500.0, "shut", new CodeWord("zip", "a zip"));

  private static String said(Wording.Part... parts) {
    return new Wording(List.of(parts)).say(VALUES::get, LengthUnit.INCH);
  }

  /** 755 3/8 in are 20 yd and 35 3/8 in; 500 g are 17.64 oz. */
  @Test
  void theyAreSaidAsATapeAndScalesTellThem() {
    assertEquals("19 7/8", said(STRAP));
    assertEquals("20 yd 35 3/8 in", said(ROLL));
    assertEquals("1 lb 2 oz", said(BAG));
  }

  @Test
  void whatIsNoNumberIsSaidInItsWords() {
    assertEquals("a zip", said(new Wording.Measure("shut", MeasureStyle.TAPE)));
    assertEquals("a zip", said(new Wording.Number("shut", NumberStyle.WHOLE)));
  }

  @Test
  void eachIsQuotedFromACellOfItsOwn() {
    assertEquals("said_strap", STRAP.cell());
    assertEquals("said_long_roll", ROLL.cell());
    assertFalse(STRAP.isLong());
    assertTrue(ROLL.isLong());
  }

  @Test
  void aLongOneIsSaidBrieflyWithoutYards() {
    assertEquals(new Wording.Measure("roll", MeasureStyle.TAPE), ROLL.brief());
    assertEquals(STRAP, STRAP.brief());
    assertEquals(BAG, BAG.brief());
  }

  @Test
  void oneMayBeSaidAlone() {
    assertEquals(new Sentence(new Wording(List.of(STRAP)), Optional.empty()), STRAP.sentence());
  }

  @Test
  void aSentenceKnowsAllThatItMaySay() {
    Wording roll = new Wording(List.of(new Wording.Words("of "), ROLL));
    Wording bag = new Wording(List.of(BAG));
    Wording.Choice choice = new Wording.Choice("shut", List.of(new Wording.Case("zip", roll)), bag);
    Wording all = new Wording(List.of(STRAP, new Wording.Words(" and "), choice));
    assertEquals(List.of(STRAP, ROLL, BAG), all.measures().toList());
  }

  @ParameterizedTest
  @CsvSource({"tape,TAPE,{unit}", "long_tape,LONG_TAPE,{unit}", "weight,WEIGHT,g"})
  void aStyleHasItsWordAndItsUnit(String word, MeasureStyle style, String unit) {
    assertEquals(Optional.of(style), MeasureStyle.of(word));
    assertEquals(word, style.word());
    assertEquals(unit, style.unit());
  }

  @ParameterizedTest
  @EnumSource(MeasureStyle.class)
  void otherWordsAreNoStyle(MeasureStyle style) {
    assertEquals(Optional.empty(), MeasureStyle.of(style.word() + "s"));
  }

  /** Sixteenths of an inch, tenths of an ounce: 318; 35.27. */
  @Test
  void aStyleHasItsSmallestParts() {
    assertEquals(318, MeasureStyle.TAPE.parts(LengthUnit.INCH, 19.875));
    assertEquals(318, MeasureStyle.LONG_TAPE.parts(LengthUnit.INCH, 19.875));
    assertEquals(35.274, MeasureStyle.WEIGHT.parts(LengthUnit.INCH, 100), 1e-3);
  }

  @Test
  void aWordIsKnownWithThoseItHadBefore() {
    CodeWord zip = new CodeWord("zip", "a zip", List.of("zipped", "a zipper"));
    assertEquals(List.of("a zip", "zipped", "a zipper"), zip.words().toList());
  }
}
