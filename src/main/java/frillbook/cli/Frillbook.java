package frillbook.cli;

import frillbook.template.TemplateException;
import frillbook.workbook.WorkbookFileException;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: makes workbooks, prints plans, lists inputs. */
@Command(
    name = "frillbook",
    mixinStandardHelpOptions = true,
    version = "frillbook 0.1.0",
    description = "Self-calculating workbooks for spiral-frill round cushions.",
    subcommands = {MakeCommand.class, PlanCommand.class, InputsCommand.class, DemoCommand.class},
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:it cannot be done: a file that exists or cannot be written, templates with mistakes",
      "2:it was asked for wrongly: an unknown name, a value out of its range"
    })
public final class Frillbook {
  private Frillbook() {}

  public static void main(String[] args) {
    CommandLine line = commandLine();
    int exitCode = line.execute(args);
    line.getOut().flush();
    System.exit(exitCode);
  }

  /** The commands as they are run, for {@code main} and for tests. */
  public static CommandLine commandLine() {
    return new CommandLine(new Frillbook())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUnmatchedOptionsArePositionalParams(false)
        .setExecutionExceptionHandler((e, line, parsed) -> refuse(e, line));
  }

  private static int refuse(Exception problem, CommandLine line) throws Exception {
    PrintWriter err = line.getErr();
    if (problem instanceof Refusal refusal) {
      err.println(refusal.getMessage());
      return refusal.exitCode();
    }
    if (problem instanceof TemplateException || problem instanceof WorkbookFileException) {
      err.println(problem.getMessage());
      return Refusal.CANNOT;
    }
    throw problem;
  }
}
