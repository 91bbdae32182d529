package frillbook.cli;

import frillbook.template.Form;
import frillbook.template.WorkbookTemplate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(name = "plan", description = "Prints the plan of a cushion without writing a workbook.")
final class PlanCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Mixin private BriefOptions options;

  @Option(names = "--json", description = "Print every name and value as JSON.")
  private boolean json;

  @Override
  public void run() {
    WorkbookTemplate template = options.template();
    Form form = Form.of(template);
    PlanReport report = PlanReport.of(form, options.unit(), options.inputs(form));
    if (!report.isWorkable()) {
      throw new Refusal(Refusal.CANNOT, report.problems());
    }
    report.problems().forEach(spec.commandLine().getErr()::println);
    PlanSheets sheets = new PlanSheets(template, report);
    spec.commandLine().getOut().print(json ? PlanJson.of(sheets) : sheets.text());
  }
}
