package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.press.CellValues;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Files as the program makes them: what the build has compiled, filled by the engine. */
final class PressedFile {
  private static final Map<LengthUnit, Press> PRESSES = new ConcurrentHashMap<>();

  private PressedFile() {}

  static Press press(LengthUnit unit) {
    return PRESSES.computeIfAbsent(unit, PackagedPress::of);
  }

  /** The file that is made with the inputs of {@code brief}. */
  static byte[] of(TrialBrief brief) {
    Press press = press(brief.unit());
    CellValues engine = new CellValues(press.form(), brief.unit(), brief.inputs(), brief.planned());
    return press.fill(press.filling(engine, brief.inputs(), Paper.A4));
  }
}
