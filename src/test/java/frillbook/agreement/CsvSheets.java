package frillbook.agreement;

import frillbook.calculation.WorkbookValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The values of a workbook as a program has written them, one file of comma-separated values (RFC
 * 4180) for each sheet. A text that could be taken for something else is quoted, a share may have
 * its sign.
 */
final class CsvSheets {
  /** A value such as {@code #DIV/0!}. */
  private record Wrong(String text) {
    @Override
    public String toString() {
      return text;
    }
  }

  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+([Ee][-+]?[0-9]+)?%?");

  /** As any program writes it; some have {@code Err:} and a number beside the common ones. */
  private static final Pattern ERROR = Pattern.compile("#.*|Err:[0-9]+");

  private final Map<String, List<List<Object>>> sheets = new HashMap<>();
  private final List<String> errors = new ArrayList<>();

  private final boolean textsAreBare;

  private CsvSheets(boolean textsAreBare) {
    this.textsAreBare = textsAreBare;
  }

  /**
   * @param written the workbook the program was given
   * @param textsAreBare whether a text is quoted only where it has a comma or blank in it
   * @param stem of the files, to which a hyphen, the sheet's name and {@code .csv} were added
   */
  static CsvSheets of(XSSFWorkbook written, boolean textsAreBare, Path stem) throws IOException {
    CsvSheets all = new CsvSheets(textsAreBare);
    for (Sheet sheet : written) {
      String name = sheet.getSheetName();
      all.sheets.put(name, rows(Files.readString(Path.of(stem + "-" + name + ".csv"))));
      sheet.forEach(row -> row.forEach(cell -> all.note((XSSFCell) cell)));
    }
    return all;
  }

  private void note(XSSFCell cell) {
    if (value(cell) instanceof Wrong wrong) {
      errors.add(WorkbookValues.where(cell) + " is " + wrong);
    }
  }

  /** A Double, a Boolean or a String; empty for what is blank or beyond the last value. */
  Object value(XSSFCell cell) {
    List<List<Object>> rows = sheets.get(cell.getSheet().getSheetName());
    List<Object> row = cell.getRowIndex() < rows.size() ? rows.get(cell.getRowIndex()) : List.of();
    return cell.getColumnIndex() < row.size() ? row.get(cell.getColumnIndex()) : "";
  }

  /** Whether the cell holds the number {@code text}, which was a text if no text is quoted. */
  boolean hasDigits(XSSFCell cell, String text) {
    return textsAreBare
        && text.matches("[0-9]+([.][0-9]+)?")
        && Double.valueOf(text).equals(value(cell));
  }

  /** Every cell that shows an error, with its address. */
  List<String> errors() {
    return List.copyOf(errors);
  }

  static List<List<Object>> rows(String text) {
    List<List<Object>> rows = new ArrayList<>();
    List<Object> row = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = end(text, at);
      row.add(value(text.substring(at, end)));
      if (end == text.length() || text.charAt(end) == '\n') {
        rows.add(row);
        row = new ArrayList<>();
      }
      at = end + 1;
    }
    return rows;
  }

  /** The comma or line's end behind the value that begins at {@code from}. */
  private static int end(String text, int from) {
    boolean quoted = false;
    int at = from;
    while (at < text.length() && (quoted || text.charAt(at) != ',' && text.charAt(at) != '\n')) {
      quoted ^= text.charAt(at++) == '"';
    }
    return at;
  }

  private static Object value(String written) {
    if (written.isEmpty()) {
      return "";
    } else if (written.startsWith("\"")) {
      return written.substring(1, written.length() - 1).replace("\"\"", "\"");
    }
    if (NUMBER.matcher(written).matches()) {
      return written.endsWith("%")
          ? (Object) (Double.parseDouble(written.substring(0, written.length() - 1)) / 100)
          : Double.valueOf(written);
    }
    if (written.equals("TRUE") || written.equals("FALSE")) {
      return written.equals("TRUE");
    }
    return ERROR.matcher(written).matches() ? (Object) new Wrong(written) : written;
  }
}
