package frillbook.cli;

import frillbook.press.WorkbookFile;
import frillbook.press.WorkbookFileException;
import java.nio.file.Path;

/** Puts workbooks in their place. */
final class PlanWorkbook {
  private PlanWorkbook() {}

  static void put(byte[] workbook, Path target, boolean force) {
    try {
      WorkbookFile.save(workbook, target, force);
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
