package frillbook.agreement;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Compares every calculated cell of a file that another program has saved with the same cell as
 * Apache POI calculates it: sentences, headings and remarks too, which have no name and no twin in
 * the engine.
 */
final class EveryCell {
  private static final String BY_POI = "the same cell by Apache POI";

  private EveryCell() {}

  /** Found beside what the engine says of the same brief, which is not counted again. */
  static Findings of(TrialBrief brief, XSSFWorkbook saved) {
    TrialWorkbook workbook = Trials.workbook(brief.units());
    SheetValues given = workbook.given(brief);
    Closeness closeness = Closeness.within(brief.planned());
    List<Difference> differences = new ArrayList<>();
    for (XSSFCell cell : workbook.formulaCells()) {
      Object here = given.value(cell);
      Object there = stored(saved, cell);
      if (!closeness.agree(here, there)) {
        differences.add(Difference.at(cell, brief, BY_POI, here, there));
      }
    }
    return closeness.findings(0, differences);
  }

  private static Object stored(XSSFWorkbook saved, XSSFCell cell) {
    XSSFSheet sheet = saved.getSheet(cell.getSheet().getSheetName());
    XSSFRow row = sheet.getRow(cell.getRowIndex());
    XSSFCell same = row == null ? null : row.getCell(cell.getColumnIndex());
    return same == null ? "" : SheetValues.stored(same);
  }
}
