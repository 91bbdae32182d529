package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.press.Colour;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Three 40 cm cushions in a sea-green cotton lawn, 150 cm wide, cut on the bias for the bench of a
 * harbour reading room. Invented.
 */
@Command(
    name = "demo",
    description = "Writes an example: three cushions for the bench of a harbour reading room.")
final class DemoCommand implements Runnable {
  private static final LengthUnit UNIT = LengthUnit.CM;

  private static final Colour SEA_GREEN = new Colour("2E8B57");

  private static final Map<String, Object> SCENARIO =
      Map.ofEntries(
          Map.entry("diameter", 40.0),
          Map.entry("quantity", 3.0),
          Map.entry("ring_spacing", 2.5),
          Map.entry("fullness", 2.25),
          Map.entry("frill_height", 5.5),
          Map.entry("fabric_width", 150.0),
          Map.entry("grain", "bias"),
          Map.entry("matching_discs", 1.0),
          Map.entry("joined_by", "order"),
          Map.entry("client_name", "the harbour reading room"),
          Map.entry("frill_fabric_words", "sea-green cotton lawn"));

  @Spec private CommandSpec spec;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      defaultValue = "target/demo-cushion.xlsx",
      description = {"The workbook to write, as .xlsx.", "Default: target/demo-cushion.xlsx."})
  private Path output;

  @Override
  public void run() {
    Press press = PackagedPress.of(UNIT);
    Map<String, Object> inputs = press.form().presets(UNIT);
    inputs.putAll(SCENARIO);
    MadeWorkbook made = MadeWorkbook.pressed(press, inputs, Paper.A4, SEA_GREEN);
    PlanWorkbook.put(made.bytes(), output, true);
    spec.commandLine().getOut().print(made.says().headline(output));
  }
}
