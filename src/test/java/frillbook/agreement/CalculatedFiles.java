package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.LengthUnit;
import frillbook.workbook.WorkbookPackage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Files of briefs, written without values and calculated by another program. */
final class CalculatedFiles {
  private final Path folder;
  private final Calculator calculator;
  private final Map<LengthUnit, XSSFWorkbook> workbooks = new HashMap<>();

  /**
   * @param folder for the files
   */
  CalculatedFiles(Path folder, Calculator calculator) {
    this.folder = folder;
    this.calculator = calculator;
  }

  /** Compares every calculated cell with the engine; an error anywhere is a difference too. */
  Findings compare(List<TrialBrief> briefs)
      throws IOException, InterruptedException, XMLStreamException {
    long start = System.nanoTime();
    List<SheetValues> sheets = of(briefs);
    Findings findings = Findings.NONE;
    for (int i = 0; i < sheets.size(); i++) {
      TrialBrief brief = briefs.get(i);
      findings =
          findings
              .and(Comparison.of(Trials.TEMPLATE, brief, sheets.get(i)))
              .and(Findings.errors(brief, sheets.get(i).errors()));
    }
    long seconds = Math.round((System.nanoTime() - start) / 1e9);
    System.out.println(calculator.program().command() + ": " + findings + ", " + seconds + " s");
    return findings;
  }

  /** What the workbook of every brief comes to, in their order. */
  List<SheetValues> of(List<TrialBrief> briefs)
      throws IOException, InterruptedException, XMLStreamException {
    List<byte[]> files = new ArrayList<>();
    for (TrialBrief brief : briefs) {
      files.add(file(brief));
    }
    List<Path> calculated = calculated(files);
    List<SheetValues> values = new ArrayList<>();
    for (int i = 0; i < briefs.size(); i++) {
      XSSFWorkbook written = workbooks.get(briefs.get(i).unit());
      values.add(calculator.values(written, calculated.get(i)));
    }
    return values;
  }

  /** What one workbook as it is comes to. */
  SheetValues of(XSSFWorkbook workbook)
      throws IOException, InterruptedException, XMLStreamException {
    Path calculated = calculated(List.of(WorkbookPackage.asItIs(workbook))).get(0);
    return calculator.values(workbook, calculated);
  }

  /** The file of {@code brief}, its inputs typed into the workbook of its unit. */
  private byte[] file(TrialBrief brief) {
    XSSFWorkbook workbook =
        workbooks.computeIfAbsent(
            brief.unit(), unit -> TrialWorkbook.compiled(Trials.TEMPLATE, unit));
    SheetValues sheet = SheetValues.stored(workbook);
    brief.inputs().forEach((name, value) -> type(sheet.cells(name).get(0), value));
    return WorkbookPackage.asItIs(workbook);
  }

  private static void type(XSSFCell cell, Object value) {
    cell.setBlank();
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value != null) {
      cell.setCellValue(value.toString());
    }
  }

  private List<Path> calculated(List<byte[]> files)
      throws IOException, InterruptedException, XMLStreamException {
    Path in = Files.createTempDirectory(folder, "written");
    Path out = Files.createTempDirectory(folder, "calculated");
    List<Path> written = new ArrayList<>();
    for (byte[] file : files) {
      FormulaCells cells = FormulaCells.of(file);
      assertTrue(cells.formulas() > 400 && cells.values() == 0, cells.toString());
      written.add(Files.write(in.resolve("brief" + written.size() + ".xlsx"), file));
    }
    calculator.calculate(written, out);
    return written.stream().map(file -> out.resolve(file.getFileName())).toList();
  }
}
