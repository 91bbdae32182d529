package frillbook.agreement;

import frillbook.calculation.WorkbookValues;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;

/**
 * A place where engine and workbook do not say the same.
 *
 * @param where address of the cell, or why there is none
 * @param formula of that cell; empty where there is none
 */
record Difference(
    TrialBrief brief, String where, String name, String formula, Object engine, Object sheet) {
  private static final int LONGEST = 300;

  static Difference at(XSSFCell cell, TrialBrief brief, String name, Object engine, Object sheet) {
    String formula = cell.getCellType() == CellType.FORMULA ? cell.getCellFormula() : "";
    return new Difference(brief, WorkbookValues.where(cell), name, formula, engine, sheet);
  }

  static Difference withoutCell(TrialBrief brief, String name, Object engine) {
    return new Difference(brief, "no cell", name, "", engine, "nothing");
  }

  static Difference error(TrialBrief brief, String error) {
    return new Difference(brief, error, "any name or none", "", "no error", "an error");
  }

  @Override
  public String toString() {
    String shown = formula.substring(0, Math.min(formula.length(), LONGEST));
    return String.format(
        "%s %s: engine %s, sheet %s, formula %s%n  in %s",
        where, name, engine, sheet, shown, brief);
  }
}
