package frillbook.cli;

import frillbook.template.WorkbookTemplate;
import frillbook.workbook.ClientPage;
import frillbook.workbook.Paper;
import frillbook.workbook.PlanFile;
import frillbook.workbook.WorkbookFileException;
import frillbook.workbook.WorkbookPackage;
import frillbook.workbook.WorkbookSetting;
import java.nio.file.Path;

/** Compiles workbooks and puts them in their place. */
final class PlanWorkbook {
  private PlanWorkbook() {}

  static void saveClientPage(
      WorkbookTemplate template, PlanFile plan, Paper paper, Path target, boolean force) {
    WorkbookSetting setting = new WorkbookSetting(plan.unit(), plan.inputs(), paper);
    put(WorkbookPackage.bytes(ClientPage.of(template, setting)), target, force);
  }

  static void put(byte[] workbook, Path target, boolean force) {
    try {
      WorkbookPackage.save(workbook, target, force);
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
