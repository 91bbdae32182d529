package frillbook.calculation;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;

/**
 * A workbook as the formula parser sees it, each name looked up once. The library would go through
 * the XML of all names for every name in every formula, which takes most of the time of making a
 * workbook.
 */
public final class FormulaNames implements FormulaParsingWorkbook {
  private record Asked(String name, int sheet) {}

  private final FormulaParsingWorkbook workbook;
  private final Map<Asked, Optional<EvaluationName>> names = new HashMap<>();

  public FormulaNames(FormulaParsingWorkbook workbook) {
    this.workbook = workbook;
  }

  @Override
  public EvaluationName getName(String name, int sheetIndex) {
    return names
        .computeIfAbsent(
            new Asked(name, sheetIndex),
            asked -> Optional.ofNullable(workbook.getName(asked.name(), asked.sheet())))
        .orElse(null);
  }

  @Override
  public Name createName() {
    return workbook.createName();
  }

  @Override
  public Table getTable(String name) {
    return workbook.getTable(name);
  }

  @Override
  public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
    return workbook.getNameXPtg(name, sheet);
  }

  @Override
  public Ptg get3DReferencePtg(CellReference cell, SheetIdentifier sheet) {
    return workbook.get3DReferencePtg(cell, sheet);
  }

  @Override
  public Ptg get3DReferencePtg(AreaReference area, SheetIdentifier sheet) {
    return workbook.get3DReferencePtg(area, sheet);
  }

  @Override
  public int getExternalSheetIndex(String sheetName) {
    return workbook.getExternalSheetIndex(sheetName);
  }

  @Override
  public int getExternalSheetIndex(String workbookName, String sheetName) {
    return workbook.getExternalSheetIndex(workbookName, sheetName);
  }

  @Override
  public SpreadsheetVersion getSpreadsheetVersion() {
    return workbook.getSpreadsheetVersion();
  }
}
