package frillbook.cli;

import frillbook.template.WorkbookTemplate;
import java.util.Map;
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
    Map<String, Object> inputs = options.inputs(template);
    PlanReport report = PlanReport.of(template, options.unit(), inputs);
    if (!report.isWorkable()) {
      throw new Refusal(Refusal.CANNOT, report.problems());
    }
    report.problems().forEach(spec.commandLine().getErr()::println);
    spec.commandLine().getOut().print(json ? PlanJson.of(report) : report.text());
  }
}
