package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.measure.LengthUnit;
import frillbook.template.InputTemplate;
import java.util.List;
import org.junit.jupiter.api.Test;

class PackagedInputsTest {
  private static List<List<Object>> facts(List<InputTemplate> inputs) {
    return inputs.stream()
        .map(
            input ->
                List.<Object>of(
                    input.name(),
                    input.kind(),
                    input.preset(LengthUnit.INCH),
                    input.preset(LengthUnit.CM)))
        .toList();
  }

  @Test
  void theyAreThoseOfTheWholeTemplate() {
    assertEquals(facts(PackagedTemplates.template().inputs()), facts(PackagedInputs.read()));
  }
}
