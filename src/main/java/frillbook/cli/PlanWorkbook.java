package frillbook.cli;

import frillbook.press.WorkbookFile;
import frillbook.press.WorkbookFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Puts workbooks in their place. */
final class PlanWorkbook {
  private static final String SUFFIX = ".xlsx";

  private PlanWorkbook() {}

  static void put(byte[] workbook, Path target, boolean force) {
    if (!target.toString().toLowerCase(Locale.ROOT).endsWith(SUFFIX)) {
      throw new Refusal(Refusal.USAGE, "-o: found \"" + target + "\". " + otherName(target));
    }
    try {
      WorkbookFile.save(workbook, target, force);
    } catch (WorkbookFileException e) {
      throw new Refusal(Refusal.CANNOT, e.getMessage() + remedy(e));
    }
  }

  private static String otherName(Path target) {
    String name = target.toString().replaceAll("\\.[A-Za-z0-9]{1,5}$", "");
    return "A workbook is written as .xlsx, which every spreadsheet program opens. Name it "
        + name
        + SUFFIX
        + ".";
  }

  private static String remedy(WorkbookFileException problem) {
    return switch (problem.reason()) {
      case EXISTS -> ". Name another file with -o, or replace it with --force.";
      case NO_FOLDER -> ". Make the folder first, or name another with -o.";
      case NOT_WRITABLE -> ". Name another place with -o.";
    };
  }
}
