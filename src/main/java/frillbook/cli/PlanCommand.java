package frillbook.cli;

import frillbook.look.WorkbookSetting;
import frillbook.press.Paper;
import frillbook.template.Form;
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
    Map<String, Object> inputs = options.inputs(Form.of(template));
    PlanReport report =
        options.hasOwnTemplates() ? own(template, inputs) : engine(template, inputs);
    if (!report.isWorkable()) {
      throw new Refusal(Refusal.CANNOT, report.problems());
    }
    report.problems().forEach(spec.commandLine().getErr()::println);
    PlanSheets sheets = new PlanSheets(template, report);
    spec.commandLine().getOut().print(json ? PlanJson.of(sheets) : sheets.text());
  }

  private PlanReport engine(WorkbookTemplate template, Map<String, Object> inputs) {
    return PlanReport.of(Form.of(template), options.unit(), inputs);
  }

  private PlanReport own(WorkbookTemplate template, Map<String, Object> inputs) {
    OwnPlan own =
        OwnPlan.of(
            template, new WorkbookSetting(options.unit(), inputs, Paper.usualFor(options.unit())));
    own.disagreements().forEach(spec.commandLine().getErr()::println);
    return own.says();
  }
}
