package frillbook.cli;

import frillbook.brief.LengthUnit;
import frillbook.brief.Units;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(name = "inputs", description = "Lists every input: name, unit, default, range, meaning.")
final class InputsCommand implements Runnable {
  /** A whole sentence for a default would push the other columns out of sight. */
  private static final int WIDEST = 14;

  @Spec private CommandSpec spec;

  @Mixin private TemplateOptions options;

  @Override
  public void run() {
    TextTable table = new TextTable("name", "unit", "default", "range", "meaning");
    Units units = options.units();
    for (InputTemplate input : options.template().inputs()) {
      table.row(
          input.name(),
          unit(input, units),
          shown(input, input.preset(units.length())),
          range(input, units.length()),
          input.prompt());
    }
    spec.commandLine().getOut().print(table.text());
  }

  private static String unit(InputTemplate input, Units units) {
    return switch (input.kind()) {
      case LENGTH -> units.length().symbol();
      case PERCENT -> "%";
      case CHOICE, TEXT -> "-";
      case NUMBER, COUNT -> units.say(input.unit());
    };
  }

  private static String range(InputTemplate input, LengthUnit unit) {
    return switch (input.kind()) {
      case CHOICE -> String.join(", ", input.choices());
      case TEXT -> "up to " + InputTemplate.LONGEST_TEXT + " characters";
      case LENGTH, PERCENT, NUMBER, COUNT ->
          shown(input, input.range(unit).from()) + " to " + shown(input, input.range(unit).to());
    };
  }

  private static String shown(InputTemplate input, Object value) {
    if (value instanceof Double number) {
      return Shown.plain(input.kind() == InputKind.PERCENT ? number * 100 : number);
    }
    String text = value.toString();
    return text.length() <= WIDEST ? text : text.substring(0, WIDEST - 1) + "…";
  }
}
