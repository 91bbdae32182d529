package frillbook.cli;

import frillbook.client.PlanFileException;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.press.Version;
import frillbook.press.WorkbookFileException;
import frillbook.source.TemplateException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;

/** The command line: makes workbooks, prints plans, lists inputs. */
@Command(
    name = "frillbook",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    version = "frillbook " + Version.NUMBER,
    description = "Self-calculating workbooks for spiral-frill round cushions.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:it cannot be done: parts that do not fit, a plan that cannot be read, a file that exists"
          + " or cannot be written, templates with mistakes",
      "2:it was asked for wrongly: an unknown name, a value out of its range",
      "70:a fault of the program itself; --debug says where"
    })
public final class Frillbook {
  private static final List<Class<?>> COMMANDS =
      List.of(
          MakeCommand.class,
          PlanCommand.class,
          ClientCommand.class,
          InputsCommand.class,
          TemplatesCommand.class,
          DemoCommand.class);

  /** What else people call a unit. */
  private static final Map<String, LengthUnit> UNITS =
      Map.ofEntries(
          Map.entry("in", LengthUnit.INCH),
          Map.entry("inches", LengthUnit.INCH),
          Map.entry("\"", LengthUnit.INCH),
          Map.entry("imperial", LengthUnit.INCH),
          Map.entry("centimetre", LengthUnit.CM),
          Map.entry("centimetres", LengthUnit.CM),
          Map.entry("centimeter", LengthUnit.CM),
          Map.entry("centimeters", LengthUnit.CM),
          Map.entry("metric", LengthUnit.CM));

  /** What else people call a paper. */
  private static final Map<String, Paper> PAPERS =
      Map.of("us letter", Paper.LETTER, "us-letter", Paper.LETTER, "din a4", Paper.A4);

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "Say where a fault of the program itself lies.")
  private boolean debug;

  private Frillbook() {}

  public static void main(String[] args) {
    CommandLine line = commandLine(args);
    int exitCode = run(line, args);
    line.getOut().flush();
    System.exit(exitCode);
  }

  /** The exit code of a run, also where the machine itself gives up, as without memory. */
  static int run(CommandLine line, String... args) {
    try {
      return line.execute(args);
    } catch (Error fault) {
      return ((Frillbook) line.getCommand()).fault(fault, line.getErr());
    }
  }

  /**
   * The commands as they are run, for {@code main} and for tests: all of them, or the one alone
   * that {@code args} begin with, since the library takes a while to look at each.
   */
  public static CommandLine commandLine(String... args) {
    Frillbook program = new Frillbook();
    CommandLine line = new CommandLine(program);
    commands(args).forEach(line::addSubcommand);
    return line.setUnmatchedOptionsArePositionalParams(false)
        .registerConverter(LengthUnit.class, text -> Word.of(LengthUnit.class, text, UNITS))
        .registerConverter(Paper.class, text -> Word.of(Paper.class, text, PAPERS))
        .setParameterExceptionHandler((e, wrong) -> misused(e))
        .setExecutionExceptionHandler((e, at, parsed) -> program.refuse(e, at));
  }

  private static List<Class<?>> commands(String... args) {
    return COMMANDS.stream()
        .filter(each -> args.length > 0 && args[0].equals(name(each)))
        .findFirst()
        .<List<Class<?>>>map(List::of)
        .orElse(COMMANDS);
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  /** What is wrong, and where to read on; the whole help would push the sentence out of sight. */
  private static int misused(ParameterException problem) {
    CommandLine line = problem.getCommandLine();
    PrintWriter err = line.getErr();
    err.println(Misuse.told(problem));
    err.println("'" + line.getCommandSpec().qualifiedName() + " --help' lists what can be given.");
    return Refusal.USAGE;
  }

  private int refuse(Exception problem, CommandLine line) {
    PrintWriter err = line.getErr();
    if (problem instanceof Refusal refusal) {
      err.println(refusal.getMessage());
      return refusal.exitCode();
    }
    if (problem instanceof TemplateException
        || problem instanceof WorkbookFileException
        || problem instanceof PlanFileException) {
      err.println(problem.getMessage());
      return Refusal.CANNOT;
    }
    return fault(problem, err);
  }

  /** What nobody foresaw: one sentence, and where it lies only for those who ask. */
  private int fault(Throwable fault, PrintWriter err) {
    if (debug) {
      fault.printStackTrace(err);
    }
    err.println(
        "This is a fault of frillbook itself and not of what you typed ("
            + fault.toString().lines().findFirst().orElseThrow()
            + ")"
            + (debug ? "." : "; the same command with --debug says where it lies."));
    err.flush();
    return Refusal.FAULT;
  }
}
