package frillbook.cli;

import frillbook.brief.Units;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.Paper;
import frillbook.workbook.WorkbookCompiler;
import frillbook.workbook.WorkbookFileException;
import frillbook.workbook.WorkbookPackage;
import frillbook.workbook.WorkbookSetting;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compiles a workbook and puts it in its place. */
final class PlanWorkbook {
  private PlanWorkbook() {}

  static void save(
      WorkbookTemplate template,
      Units units,
      Map<String, Object> inputs,
      Paper paper,
      Path target,
      boolean force) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      WorkbookSetting setting = new WorkbookSetting(units, inputs, paper);
      new WorkbookCompiler().compileInto(workbook, template, setting);
      WorkbookPackage.save(WorkbookPackage.bytes(workbook), target, force);
    } catch (WorkbookFileException e) {
      throw new Refusal(Refusal.CANNOT, e.getMessage() + remedy(e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
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
