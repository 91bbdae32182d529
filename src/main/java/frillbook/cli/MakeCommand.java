package frillbook.cli;

import frillbook.look.WorkbookSetting;
import frillbook.press.Colour;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import frillbook.template.Form;
import frillbook.template.WorkbookTemplate;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(name = "make", description = "Writes a workbook that calculates the plan of a cushion.")
final class MakeCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Mixin private BriefOptions options;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      defaultValue = "cushion.xlsx",
      description = {"The workbook to write, as .xlsx.", "Default: cushion.xlsx."})
  private Path output;

  @Option(names = "--force", description = "Replace a file that already exists.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "Paper for printing: a4 or letter. Default: letter for inch, a4 for cm.")
  private Paper paper;

  @Option(
      names = "--colour",
      paramLabel = "COLOUR",
      converter = ColourName.class,
      description = {
        "Colour of the fabric in the pictures: six hex digits",
        "or a colour word of CSS, such as teal."
      })
  private Colour colour;

  @Override
  public void run() {
    MadeWorkbook made = options.hasOwnTemplates() ? calculated() : pressed();
    PlanWorkbook.put(made.bytes(), output, force);
    made.says().problems().forEach(spec.commandLine().getErr()::println);
    made.disagreements().forEach(spec.commandLine().getErr()::println);
    spec.commandLine().getOut().print(made.says().headline(output));
  }

  /** Who measures in inches prints on Letter, who measures in centimetres on A4. */
  private Paper paper() {
    return paper == null ? Paper.usualFor(options.unit()) : paper;
  }

  /** No default of the option: the library would make a text of it, whether asked for or not. */
  private Colour colour() {
    return colour == null ? Colour.OURS : colour;
  }

  private MadeWorkbook pressed() {
    Press press = PackagedPress.of(options.unit());
    return MadeWorkbook.pressed(press, options.inputs(press.form()), paper(), colour());
  }

  private MadeWorkbook calculated() {
    WorkbookTemplate template = options.template();
    Map<String, Object> inputs = options.inputs(Form.of(template));
    return MadeWorkbook.calculated(
        template, new WorkbookSetting(options.unit(), inputs, paper(), colour()));
  }
}
