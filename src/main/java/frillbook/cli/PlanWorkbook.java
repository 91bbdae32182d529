package frillbook.cli;

import frillbook.brief.Units;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.ClientPage;
import frillbook.workbook.Paper;
import frillbook.workbook.PlanFile;
import frillbook.workbook.WorkbookCompiler;
import frillbook.workbook.WorkbookFileException;
import frillbook.workbook.WorkbookPackage;
import frillbook.workbook.WorkbookSetting;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compiles workbooks and puts them in their place. */
final class PlanWorkbook {
  private PlanWorkbook() {}

  static void save(
      WorkbookTemplate template,
      Units units,
      Map<String, Object> inputs,
      Paper paper,
      Path target,
      boolean force) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    WorkbookSetting setting = new WorkbookSetting(units, inputs, paper);
    new WorkbookCompiler().compileInto(workbook, template, setting);
    put(workbook, target, force);
  }

  static void saveClientPage(
      WorkbookTemplate template, PlanFile plan, Paper paper, Path target, boolean force) {
    WorkbookSetting setting = new WorkbookSetting(plan.units(), plan.inputs(), paper);
    put(ClientPage.of(template, setting), target, force);
  }

  private static void put(XSSFWorkbook workbook, Path target, boolean force) {
    try {
      WorkbookPackage.save(WorkbookPackage.bytes(workbook), target, force);
    } catch (WorkbookFileException e) {
      throw new Refusal(Refusal.CANNOT, e.getMessage() + remedy(e));
    }
  }

  private static String remedy(WorkbookFileException problem) {
    return switch (problem.reason()) {
      case EXISTS -> ". Give -o another name, or --force to replace it.";
      case NO_FOLDER -> ". Make the folder first, or give -o another place.";
      case NOT_WRITABLE -> ". Give -o another place.";
    };
  }
}
