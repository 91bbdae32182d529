package frillbook.press;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** What the cells of a workbook hold, without looks, as a plain writer writes it. */
record PlainCells(List<Sheet> sheets) {
  private static final int FORMULA = 0;
  private static final int NUMBER = 1;
  private static final int TEXT = 2;

  record Sheet(String name, List<PlainCell> cells) {}

  /**
   * A cell that is not empty.
   *
   * @param text the formula or the words
   */
  record PlainCell(int row, int column, int kind, double number, String text) {}

  int count() {
    return sheets.stream().mapToInt(sheet -> sheet.cells().size()).sum();
  }

  /** Those of {@code workbook} that are not empty. */
  static PlainCells of(XSSFWorkbook workbook) {
    List<Sheet> sheets = new ArrayList<>();
    workbook.forEach(
        sheet -> {
          List<PlainCell> cells = new ArrayList<>();
          sheet.forEach(row -> row.forEach(cell -> add((XSSFCell) cell, cells)));
          sheets.add(new Sheet(sheet.getSheetName(), cells));
        });
    return new PlainCells(sheets);
  }

  private static void add(XSSFCell cell, List<PlainCell> cells) {
    int row = cell.getRowIndex();
    int column = cell.getColumnIndex();
    if (cell.getCellType() == CellType.FORMULA) {
      cells.add(new PlainCell(row, column, FORMULA, 0, cell.getCellFormula()));
    } else if (cell.getCellType() == CellType.NUMERIC) {
      cells.add(new PlainCell(row, column, NUMBER, cell.getNumericCellValue(), ""));
    } else if (cell.getCellType() == CellType.STRING) {
      cells.add(new PlainCell(row, column, TEXT, 0, cell.getStringCellValue()));
    }
  }

  /** Writes them with the plain writer. */
  void write(OutputStream target) throws IOException {
    Workbook workbook = new Workbook(target, "peer", "1.0");
    for (Sheet sheet : sheets) {
      Worksheet page = workbook.newWorksheet(sheet.name());
      for (PlainCell cell : sheet.cells()) {
        switch (cell.kind()) {
          case FORMULA -> page.formula(cell.row(), cell.column(), cell.text());
          case NUMBER -> page.value(cell.row(), cell.column(), cell.number());
          default -> page.value(cell.row(), cell.column(), cell.text());
        }
      }
    }
    workbook.finish();
  }

  void save(Path file) throws IOException {
    try (var out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
      out.writeInt(sheets.size());
      for (Sheet sheet : sheets) {
        out.writeUTF(sheet.name());
        out.writeInt(sheet.cells().size());
        for (PlainCell cell : sheet.cells()) {
          out.writeInt(cell.row());
          out.writeInt(cell.column());
          out.writeByte(cell.kind());
          out.writeDouble(cell.number());
          out.writeUTF(cell.text());
        }
      }
    }
  }

  static PlainCells read(Path file) throws IOException {
    try (var in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      List<Sheet> sheets = new ArrayList<>();
      for (int sheet = in.readInt(); sheet > 0; sheet--) {
        String name = in.readUTF();
        List<PlainCell> cells = new ArrayList<>();
        for (int cell = in.readInt(); cell > 0; cell--) {
          cells.add(
              new PlainCell(
                  in.readInt(), in.readInt(), in.readByte(), in.readDouble(), in.readUTF()));
        }
        sheets.add(new Sheet(name, cells));
      }
      return new PlainCells(sheets);
    }
  }
}
