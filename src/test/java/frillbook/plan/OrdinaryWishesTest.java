package frillbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.reading.PackagedTemplates;
import frillbook.template.InputTemplate;
import frillbook.template.Range;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a maker gets who types a diameter into a new workbook and nothing else. */
class OrdinaryWishesTest {
  private static final List<InputTemplate> INPUTS = PackagedTemplates.template().inputs();

  private static Plan plan(LengthUnit unit, double diameter) {
    Map<String, Object> typed = new HashMap<>();
    INPUTS.forEach(input -> typed.put(input.name(), input.preset(unit)));
    typed.put("diameter", diameter);
    return Plan.of(Brief.of(unit, typed));
  }

  private static Range diameters(LengthUnit unit) {
    return INPUTS.stream()
        .filter(input -> input.name().equals("diameter"))
        .findFirst()
        .orElseThrow()
        .range(unit);
  }

  /** From the smallest cushion to the largest in fifty steps. */
  @ParameterizedTest
  @EnumSource
  void noDiameterThatMayBeTypedIsWithoutAPrice(LengthUnit unit) {
    Range range = diameters(unit);
    double[] unpriced =
        DoubleStream.iterate(0, step -> step <= 50, step -> step + 1)
            .map(step -> range.from() + (range.to() - range.from()) * step / 50)
            .filter(diameter -> !plan(unit, diameter).guards().priceOk())
            .toArray();
    assertEquals(0, unpriced.length, () -> unit + ": " + Arrays.toString(unpriced));
  }

  /**
   * Interfacing is 36 in wide and fabrics 54 in: bases of 33.5 in are (33.5 + 1) ÷ 0.96 = 36 in to
   * the eighth, those of 33.6 in 36 1/8, those of 49.8 in 53 in, as much as two selvedges leave.
   */
  @ParameterizedTest
  @CsvSource({
    "18,true,true,true",
    "33.5,true,true,true",
    "33.6,false,true,true",
    "49.8,false,true,true",
    "50,false,false,false",
    "58,false,false,false"
  })
  void whatIsTooNarrowIsSaidOfEachMaterial(
      double diameter, boolean interfacing, boolean base, boolean disc) {
    Checks checks = plan(LengthUnit.INCH, diameter).checks();
    assertEquals(interfacing, checks.interfacingFits());
    assertEquals(base, checks.baseFitsFabric());
    assertEquals(disc, checks.discFitsFabric());
    assertNotEquals(Plan.Flag.STOP, plan(LengthUnit.INCH, diameter).checkFlag());
  }
}
