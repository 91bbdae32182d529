package frillbook.calculation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook as the formula parser sees it, its names read once. The library would go through the
 * XML of all names for every name in every formula, which takes most of the time of making a
 * workbook.
 */
final class FormulaNames implements FormulaParsingWorkbook {
  private final XSSFEvaluationWorkbook workbook;

  /** Names of the whole workbook that no sheet has too, in small letters. */
  private final Map<String, EvaluationName> names = new HashMap<>();

  FormulaNames(XSSFWorkbook written) {
    workbook = XSSFEvaluationWorkbook.create(written);
    int index = 0;
    Set<String> ofSheets = new HashSet<>();
    for (XSSFName name : written.getAllNames()) {
      String small = small(name.getNameName());
      if (name.getSheetIndex() < 0) {
        names.put(small, workbook.getName(new NamePtg(index)));
      } else {
        ofSheets.add(small);
      }
      index++;
    }
    names.keySet().removeAll(ofSheets);
  }

  private static String small(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  @Override
  public EvaluationName getName(String name, int sheetIndex) {
    EvaluationName known = names.get(small(name));
    return known == null ? workbook.getName(name, sheetIndex) : known;
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
