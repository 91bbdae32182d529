package frillbook.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.formula.eval.FunctionEval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PortableFunctionsTest {
  @Test
  void everyFunctionCanBeCalculatedByTheLibrary() {
    assertFalse(PortableFunctions.names().isEmpty());
    List<String> lacking = new ArrayList<>(PortableFunctions.names());
    lacking.removeAll(FunctionEval.getSupportedFunctionNames());
    assertEquals(List.of(), lacking);
  }

  /** The functions that ISO/IEC 29500-1, 18.17.7 and Excel's own list call volatile. */
  @ParameterizedTest
  @ValueSource(
      strings = {"NOW", "TODAY", "RAND", "RANDBETWEEN", "OFFSET", "INDIRECT", "INFO", "CELL"})
  void noVolatileFunctionIsListed(String function) {
    assertTrue(!PortableFunctions.names().contains(function), function);
  }
}
