package frillbook.agreement;

import frillbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Workbooks, without values, calculated by another program.
 *
 * @param others what workbooks that are not of a brief come to, in their order
 */
record CalculatedFiles(Map<TrialBrief, SheetValues> briefs, List<SheetValues> others) {
  /** All at once: to start a program and to open a workbook takes longer than to calculate it. */
  static CalculatedFiles of(
      Calculator calculator, List<TrialBrief> briefs, List<XSSFWorkbook> others) throws Exception {
    List<List<TrialBrief>> byUnit = Stream.of(LengthUnit.values()).map(u -> of(u, briefs)).toList();
    List<Calculator.Sums> sums = new ArrayList<>();
    for (LengthUnit unit : LengthUnit.values()) {
      sums.add(
          Calculator.Sums.of(
              unit, byUnit.get(unit.ordinal()).stream().map(TrialBrief::cells).toList()));
    }
    for (XSSFWorkbook other : others) {
      sums.add(Calculator.Sums.of(other));
    }
    List<List<SheetValues>> values = calculator.values(sums);
    Map<TrialBrief, SheetValues> known = new HashMap<>();
    for (int unit = 0; unit < byUnit.size(); unit++) {
      for (int index = 0; index < byUnit.get(unit).size(); index++) {
        known.put(byUnit.get(unit).get(index), values.get(unit).get(index));
      }
    }
    return new CalculatedFiles(
        known,
        values.subList(byUnit.size(), values.size()).stream().map(each -> each.get(0)).toList());
  }

  private static List<TrialBrief> of(LengthUnit unit, List<TrialBrief> briefs) {
    return briefs.stream().filter(brief -> brief.unit() == unit).toList();
  }

  /** Compares every calculated cell with the engine; an error anywhere is a difference too. */
  Findings compare(List<TrialBrief> compared) {
    Findings findings = Findings.NONE;
    for (TrialBrief brief : compared) {
      SheetValues sheet = briefs.get(brief);
      findings =
          findings
              .and(Comparison.of(Trials.TEMPLATE, brief, sheet))
              .and(Findings.errors(brief, sheet.errors()));
    }
    return findings;
  }
}
