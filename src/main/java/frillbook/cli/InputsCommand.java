package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.UnitText;
import frillbook.template.WorkbookTemplate;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
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
    LengthUnit unit = options.unit();
    WorkbookTemplate template = options.template();
    Map<String, Object> presets = new HashMap<>();
    template.inputs().forEach(input -> presets.put(input.name(), options.preset(input)));
    for (InputTemplate input : template.inputs()) {
      table.row(
          input.name(),
          unit(input, unit, presets),
          shown(input, unit, presets.get(input.name())),
          range(input, unit),
          input.prompt());
    }
    spec.commandLine().getOut().print(table.text());
  }

  private static String unit(InputTemplate input, LengthUnit unit, Map<String, Object> presets) {
    return switch (input.kind()) {
      case LENGTH -> unit.symbol();
      case PERCENT -> "%";
      case CHOICE, CURRENCY, TEXT -> "-";
      case NUMBER, COUNT -> UnitText.of(input.unit()).say(presets::get, unit);
    };
  }

  private static String range(InputTemplate input, LengthUnit unit) {
    return switch (input.kind()) {
      case CHOICE -> InputText.codes(input).collect(Collectors.joining(", "));
      case CURRENCY -> "ISO 4217 codes";
      case TEXT -> "up to " + InputTemplate.LONGEST_TEXT + " characters";
      case LENGTH, PERCENT, NUMBER, COUNT ->
          shown(input, unit, input.range(unit).from())
              + " to "
              + shown(input, unit, input.range(unit).to());
    };
  }

  private static String shown(InputTemplate input, LengthUnit unit, Object value) {
    if (value instanceof Double number) {
      return input.kind() == InputKind.PERCENT
          ? Shown.plain(number * 100)
          : input.said(unit, number);
    }
    String text = value.toString();
    return text.length() <= WIDEST ? text : text.substring(0, WIDEST - 1) + "…";
  }
}
