package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.Units;
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
  private final Map<Units, XSSFWorkbook> workbooks = new HashMap<>();

  /**
   * @param folder for the files
   */
  CalculatedFiles(Path folder, Calculator calculator) {
    this.folder = folder;
    this.calculator = calculator;
  }

  /**
   * Compares every name and table cell with the engine, and every calculated cell with Apache POI;
   * an error anywhere is a difference too.
   */
  Findings compare(List<TrialBrief> briefs)
      throws IOException, InterruptedException, XMLStreamException {
    long start = System.nanoTime();
    List<Path> files = of(briefs);
    long calculated = System.nanoTime();
    Findings engine = Findings.NONE;
    Findings cells = Findings.NONE;
    for (int i = 0; i < files.size(); i++) {
      TrialBrief brief = briefs.get(i);
      XSSFWorkbook workbook = read(files.get(i));
      engine =
          engine
              .and(Comparison.of(Trials.TEMPLATE, brief, SheetValues.stored(workbook)))
              .and(Findings.errors(brief, SheetValues.storedErrors(workbook)));
      cells = cells.and(EveryCell.of(brief, workbook));
    }
    long seconds = Math.round((System.nanoTime() - start) / 1e9);
    System.out.println(calculator.program().command() + ", engine: " + engine);
    System.out.println(
        calculator.program().command()
            + ", POI: "
            + cells
            + ", "
            + seconds
            + " s, of these "
            + Math.round((calculated - start) / 1e9)
            + " s to calculate");
    return engine.and(cells);
  }

  /** The workbook of every brief, calculated, in their order. */
  List<Path> of(List<TrialBrief> briefs)
      throws IOException, InterruptedException, XMLStreamException {
    List<byte[]> files = new ArrayList<>();
    for (TrialBrief brief : briefs) {
      files.add(file(brief));
    }
    return calculated(files);
  }

  /** One workbook as it is, calculated. */
  XSSFWorkbook of(XSSFWorkbook workbook)
      throws IOException, InterruptedException, XMLStreamException {
    return read(calculated(List.of(WorkbookPackage.asItIs(workbook))).get(0));
  }

  static XSSFWorkbook read(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  /** The file of {@code brief}, its inputs typed into the workbook of its units. */
  private byte[] file(TrialBrief brief) {
    XSSFWorkbook workbook =
        workbooks.computeIfAbsent(
            brief.units(), units -> TrialWorkbook.compiled(Trials.TEMPLATE, units));
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
      assertTrue(cells.formulas() > 1000 && cells.values() == 0, cells.toString());
      written.add(Files.write(in.resolve("brief" + written.size() + ".xlsx"), file));
    }
    calculator.calculate(written, out);
    return written.stream().map(file -> out.resolve(file.getFileName())).toList();
  }
}
