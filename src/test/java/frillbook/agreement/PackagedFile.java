package frillbook.agreement;

import frillbook.measure.LengthUnit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The file that the packaged templates give with every input at its default. */
final class PackagedFile {
  private static final Map<LengthUnit, byte[]> FILES = new ConcurrentHashMap<>();

  /** Of every thread: the library does not say that two may read one workbook. */
  private static final ThreadLocal<Map<LengthUnit, XSSFWorkbook>> READ =
      ThreadLocal.withInitial(() -> new EnumMap<>(LengthUnit.class));

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
    Map<LengthUnit, XSSFWorkbook> read = READ.get();
    if (!read.containsKey(unit)) {
      read.put(unit, new XSSFWorkbook(new ByteArrayInputStream(of(unit))));
    }
    return read.get(unit);
  }

  static List<XSSFCell> cells(XSSFWorkbook workbook) {
    List<XSSFCell> cells = new ArrayList<>();
    workbook.forEach(
        sheet -> sheet.forEach(row -> row.forEach(cell -> cells.add((XSSFCell) cell))));
    return cells;
  }

  static List<XSSFCell> formulaCells(XSSFWorkbook workbook) {
    return cells(workbook).stream().filter(cell -> cell.getCellType() == CellType.FORMULA).toList();
  }
}
