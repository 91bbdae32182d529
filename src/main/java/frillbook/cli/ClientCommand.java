package frillbook.cli;

import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.Paper;
import frillbook.workbook.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "client",
    mixinStandardHelpOptions = true,
    description = "Writes a one-page workbook for the client from a plan, values only.")
final class ClientCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "PLAN",
      description = "A workbook that frillbook made, as a spreadsheet program last saved it.")
  private Path plan;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      defaultValue = "for-the-client.xlsx",
      description = "The page to write. Default: for-the-client.xlsx.")
  private Path output;

  @Option(names = "--force", description = "Replace a file that is already there.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "Paper for printing: a4 or letter. Default: that of the plan.")
  private Paper paper;

  @Override
  public void run() {
    WorkbookTemplate template = TemplateReader.read(TemplateSource.packaged());
    PlanFile file = PlanFile.read(plan, template);
    refuseToReplacePlan();
    PlanReport report = PlanReport.of(template, file.unit(), file.inputs());
    if (!report.isWorkable()) {
      throw new Refusal(Refusal.CANNOT, report.problems());
    }
    Paper sheet = paper == null ? file.paper() : paper;
    PlanWorkbook.saveClientPage(template, file, sheet, output, force);
    report.problems().forEach(spec.commandLine().getErr()::println);
    spec.commandLine().getOut().println("page for the client  " + output);
  }

  /** Also under another name: a link, or the same place by another way. */
  private void refuseToReplacePlan() {
    if (isPlan(output)) {
      throw new Refusal(
          Refusal.CANNOT, output + " is the plan itself. Give -o another name for the page.");
    }
  }

  private boolean isPlan(Path file) {
    try {
      return Files.exists(file) && Files.isSameFile(plan, file);
    } catch (IOException e) {
      throw new Refusal(
          Refusal.CANNOT, file + " cannot be told from the plan. Give -o another place.");
    }
  }
}
