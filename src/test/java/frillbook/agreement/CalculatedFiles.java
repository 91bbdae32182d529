package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import frillbook.pressing.WorkbookPackage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks of briefs, without values, calculated by another program. */
final class CalculatedFiles {
  private final Calculator calculator;
  private final Map<LengthUnit, XSSFWorkbook> workbooks = new HashMap<>();

  CalculatedFiles(Calculator calculator) {
    this.calculator = calculator;
  }

  /** Compares every calculated cell with the engine; an error anywhere is a difference too. */
  static Findings compare(List<TrialBrief> briefs, Map<TrialBrief, SheetValues> calculated) {
    Findings findings = Findings.NONE;
    for (TrialBrief brief : briefs) {
      SheetValues sheet = calculated.get(brief);
      findings =
          findings
              .and(Comparison.of(Trials.TEMPLATE, brief, sheet))
              .and(Findings.errors(brief, sheet.errors()));
    }
    return findings;
  }

  /** What the workbook of every brief comes to, in their order. */
  List<SheetValues> of(List<TrialBrief> briefs) throws Exception {
    SheetValues[] values = new SheetValues[briefs.size()];
    for (LengthUnit unit : LengthUnit.values()) {
      List<Integer> these =
          IntStream.range(0, values.length)
              .boxed()
              .filter(i -> briefs.get(i).unit() == unit)
              .toList();
      List<Map<String, Object>> inputs = these.stream().map(i -> briefs.get(i).inputs()).toList();
      List<SheetValues> calculated = calculated(workbook(unit), inputs);
      for (int i = 0; i < calculated.size(); i++) {
        values[these.get(i)] = calculated.get(i);
      }
    }
    return List.of(values);
  }

  /** What one workbook as it is comes to. */
  SheetValues of(XSSFWorkbook workbook) throws Exception {
    return calculated(workbook, List.of(Map.of())).get(0);
  }

  private XSSFWorkbook workbook(LengthUnit unit) {
    return workbooks.computeIfAbsent(unit, of -> TrialWorkbook.compiled(Trials.TEMPLATE, of));
  }

  private List<SheetValues> calculated(XSSFWorkbook workbook, List<Map<String, Object>> inputs)
      throws Exception {
    if (inputs.isEmpty()) {
      return List.of();
    }
    FormulaCells cells = FormulaCells.of(WorkbookPackage.asItIs(workbook));
    assertTrue(cells.formulas() > 400 && cells.values() == 0, cells.toString());
    return calculator.values(workbook, inputs);
  }
}
