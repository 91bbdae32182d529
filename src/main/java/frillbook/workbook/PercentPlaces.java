package frillbook.workbook;

import frillbook.look.NumberFormats;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.ValueFormat;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Shows per cent as sentences say it: 60% and 8.875%. No format alone leaves out both the zeros and
 * the point; so the cell's own is that of whole ones, and a conditional one has places.
 */
final class PercentPlaces {
  private final long broken;

  PercentPlaces(XSSFWorkbook workbook) {
    StylesTable styles = workbook.getStylesSource();
    this.broken = Emphasis.put(styles, Emphasis.numbers(styles, NumberFormats.BROKEN_PERCENT));
  }

  /** Sets the format of every input and line of per cent on a sheet. */
  void set(XSSFSheet sheet, List<SheetPlaces.Placed> entries) {
    entries.stream()
        .filter(placed -> isPercent(placed.entry()))
        .forEach(placed -> set(sheet, placed.row()));
  }

  private static boolean isPercent(RowTemplate entry) {
    return entry instanceof InputTemplate input && input.kind() == InputKind.PERCENT
        || entry instanceof LineTemplate line && line.format() == ValueFormat.PERCENT;
  }

  private void set(XSSFSheet sheet, int row) {
    String cell = new CellReference(row, SheetPlaces.VALUE).formatAsString();
    String broken = "ROUND(" + cell + "*100000,0)<>1000*ROUND(" + cell + "*100,0)";
    CellRangeAddress cells = new CellRangeAddress(row, row, SheetPlaces.VALUE, SheetPlaces.VALUE);
    Emphasis.add(sheet, List.of(cells), Map.of(broken, this.broken));
  }
}
