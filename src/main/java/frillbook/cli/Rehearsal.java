package frillbook.cli;

import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.press.Press;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Makes the workbook of the presets on another thread while the command line is being read, and
 * throws it away. Most of what a first workbook takes is the virtual machine's loading of classes;
 * with two processors that is half done when the brief is known.
 */
final class Rehearsal implements Runnable {
  private Rehearsal() {}

  static void begin() {
    Thread thread = new Thread(new Rehearsal(), "rehearsal");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void run() {
    try {
      Press press = PlanWorkbook.press(LengthUnit.INCH);
      Map<String, Object> inputs = new LinkedHashMap<>();
      press.form().inputs().forEach(i -> inputs.put(i.name(), i.preset(LengthUnit.INCH)));
      MadeWorkbook.pressed(press, inputs, Paper.A4);
    } catch (RuntimeException | LinkageError e) {
      // Whoever makes the workbook in earnest meets the same and tells it.
      return;
    }
  }
}
