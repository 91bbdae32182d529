package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import frillbook.brief.Units;
import frillbook.workbook.WorkbookPackage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Engine and workbook, calculated by LibreOffice from files without values, say the same. */
final class LibreOfficeTest {
  private static final int RANDOM_BRIEFS = 30;
  private static final int EVERY_NTH_EDGE = 45;
  private static final int EVERY_NTH_QUOTIENT = 15;
  private static final int EVERY_NTH_SPECIAL = 14;

  @TempDir Path folder;

  private final Map<Units, XSSFWorkbook> workbooks = new HashMap<>();

  @BeforeEach
  void skipWithAWordWhereItIsAbsent() {
    if (!LibreOffice.isPresent() && !LibreOffice.isRequired()) {
      System.out.println("SKIPPED: soffice is not installed, LibreOffice has checked nothing");
      assumeTrue(false, "soffice is not installed");
    }
    assertTrue(LibreOffice.isPresent(), "soffice is required and not installed");
  }

  private static List<TrialBrief> briefs() {
    return Stream.of(
            RandomBriefs.of(Trials.TEMPLATE, RANDOM_BRIEFS).stream(),
            some(EdgeBriefs.of(Trials.TEMPLATE), EVERY_NTH_EDGE),
            some(WholeQuotients.of(Trials.TEMPLATE), EVERY_NTH_QUOTIENT),
            some(PlainBriefs.of(Trials.TEMPLATE), EVERY_NTH_SPECIAL),
            FailingChecksTest.briefs())
        .flatMap(kind -> kind)
        .toList();
  }

  private static Stream<TrialBrief> some(List<TrialBrief> all, int everyNth) {
    return IntStream.range(0, all.size()).filter(i -> i % everyNth == 0).mapToObj(all::get);
  }

  /** Briefs with a cell that cannot be used. */
  private static List<TrialBrief> unusable() {
    return some(RefusalTest.unusable(), 41).toList();
  }

  /** The file of {@code brief}, its inputs typed into the workbook of its unit. */
  private byte[] file(TrialBrief brief) {
    XSSFWorkbook workbook =
        workbooks.computeIfAbsent(
            brief.units(), units -> TrialWorkbook.compiled(Trials.TEMPLATE, units));
    SheetValues sheet = SheetValues.stored(workbook);
    brief.inputs().forEach((name, value) -> type(sheet.cells(name).get(0), value));
    return WorkbookPackage.bytes(workbook);
  }

  private static void type(XSSFCell cell, Object value) {
    cell.setBlank();
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value != null) {
      cell.setCellValue(value.toString());
    }
  }

  /** Writes a file without values for every brief, and lets LibreOffice calculate them all. */
  private List<Path> calculated(List<TrialBrief> briefs)
      throws IOException, InterruptedException, XMLStreamException {
    Path out = Files.createDirectory(folder.resolve("out"));
    List<Path> files = new ArrayList<>();
    for (TrialBrief brief : briefs) {
      byte[] stripped = StrippedFile.of(file(brief));
      FormulaCells cells = FormulaCells.of(stripped);
      assertTrue(cells.formulas() > 1000 && cells.values() == 0, cells.toString());
      files.add(Files.write(folder.resolve("brief" + files.size() + ".xlsx"), stripped));
    }
    new LibreOffice(folder).calculate(files, out);
    return files.stream().map(file -> out.resolve(file.getFileName())).toList();
  }

  private static XSSFWorkbook read(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  @Test
  void sixtyBriefsAndMoreAgree() throws Exception {
    long start = System.nanoTime();
    List<TrialBrief> briefs = briefs();
    List<Path> files = calculated(briefs);
    Findings findings = Findings.NONE;
    for (int i = 0; i < files.size(); i++) {
      XSSFWorkbook workbook = read(files.get(i));
      SheetValues sheet = SheetValues.stored(workbook);
      findings =
          findings
              .and(Comparison.of(Trials.TEMPLATE, briefs.get(i), sheet))
              .and(Findings.errors(briefs.get(i), SheetValues.storedErrors(workbook)));
    }
    long seconds = Math.round((System.nanoTime() - start) / 1e9);
    System.out.println("LibreOffice: " + findings + ", " + seconds + " s");
    findings.requireAgreement();
    assertTrue(findings.briefs() >= 60, findings.toString());
  }

  @Test
  void aCellThatCannotBeUsedLeavesNoError() throws Exception {
    List<TrialBrief> briefs = unusable();
    List<Path> files = calculated(briefs);
    for (int i = 0; i < files.size(); i++) {
      XSSFWorkbook workbook = read(files.get(i));
      SheetValues sheet = SheetValues.stored(workbook);
      assertEquals(List.of(), SheetValues.storedErrors(workbook), briefs.get(i).toString());
      assertEquals("STOP", sheet.value("check_flag"), briefs.get(i).toString());
      assertEquals("", sheet.value("buy_length"), briefs.get(i).toString());
    }
    assertTrue(files.size() >= 5, "files");
  }

  /** The comparison of LibreOffice's files can fail too. */
  @Test
  void aWrongFormulaIsFound() throws Exception {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    XSSFWorkbook wrong = TrialWorkbook.compiled(Trials.TEMPLATE, brief.units());
    SheetValues.stored(wrong).cells("area_rule_length").get(0).setCellFormula("1+1");
    Path file =
        Files.write(folder.resolve("wrong.xlsx"), StrippedFile.of(WorkbookPackage.bytes(wrong)));
    Path out = Files.createDirectory(folder.resolve("out"));
    new LibreOffice(folder).calculate(List.of(file), out);
    SheetValues sheet = SheetValues.stored(read(out.resolve("wrong.xlsx")));
    List<Difference> found = Comparison.of(Trials.TEMPLATE, brief, sheet).differences();
    assertEquals(List.of("area_rule_length"), found.stream().map(Difference::name).toList());
  }
}
