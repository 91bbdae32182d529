package frillbook.agreement;

import frillbook.measure.LengthUnit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The file that the packaged templates give with every input at its default. */
final class PackagedFile {
  private static final Map<LengthUnit, byte[]> FILES = new HashMap<>();

  private static final Map<LengthUnit, XSSFWorkbook> READ = new HashMap<>();

  /** The library parses a formula that is filled down anew for every cell. */
  private static final Map<Cell, String> FORMULAS = new IdentityHashMap<>();

  private PackagedFile() {}

  static List<LengthUnit> units() {
    return List.of(Trials.INCH, Trials.CM);
  }

  static byte[] of(LengthUnit unit) {
    return FILES.computeIfAbsent(unit, PackagedFile::made);
  }

  /** Makes the file anew. */
  static byte[] made(LengthUnit unit) {
    return PressedFile.of(TrialBrief.preset(Trials.TEMPLATE, unit));
  }

  /** The file as the library reads it; for looking only. */
  static XSSFWorkbook read(LengthUnit unit) throws IOException {
    if (!READ.containsKey(unit)) {
      READ.put(unit, new XSSFWorkbook(new ByteArrayInputStream(of(unit))));
    }
    return READ.get(unit);
  }

  static List<XSSFCell> formulaCells(XSSFWorkbook workbook) {
    List<XSSFCell> cells = new ArrayList<>();
    workbook.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell -> {
                          if (cell.getCellType() == CellType.FORMULA) {
                            cells.add((XSSFCell) cell);
                          }
                        })));
    return cells;
  }

  static String formulaOf(Cell cell) {
    return FORMULAS.computeIfAbsent(cell, Cell::getCellFormula);
  }
}
