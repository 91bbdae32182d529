package frillbook.cli;

import frillbook.brief.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(name = "inputs", description = "Lists every input: name, unit, default, range, meaning.")
final class InputsCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Mixin private TemplateOptions options;

  @Override
  public void run() {
    TextTable table = new TextTable("name", "unit", "default", "range", "meaning");
    for (InputTemplate input : options.template().inputs()) {
      table.row(
          input.name(),
          unit(input, options.unit()),
          shown(input, input.preset(options.unit())),
          range(input, options.unit()),
          input.prompt());
    }
    spec.commandLine().getOut().print(table.text());
  }

  private static String unit(InputTemplate input, LengthUnit unit) {
    return switch (input.kind()) {
      case LENGTH -> unit.symbol();
      case PERCENT -> "%";
      case CHOICE -> "-";
      case NUMBER, COUNT -> input.unit();
    };
  }

  private static String range(InputTemplate input, LengthUnit unit) {
    return input.kind() == InputKind.CHOICE
        ? String.join(", ", input.choices())
        : shown(input, input.range(unit).from()) + " to " + shown(input, input.range(unit).to());
  }

  private static String shown(InputTemplate input, Object value) {
    if (value instanceof Double number) {
      return Shown.plain(input.kind() == InputKind.PERCENT ? number * 100 : number);
    }
    return value.toString();
  }
}
