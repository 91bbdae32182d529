package frillbook.pressing;

import frillbook.calculation.WorkbookValues;
import frillbook.look.Span;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.CellSource;
import frillbook.press.Paper;
import frillbook.press.Part;
import frillbook.press.Press;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.SheetPlaces;
import frillbook.workbook.WorkbookCompiler;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compiles templates into a {@link Press}. */
public final class PressMaker {
  private static final String SHEETS = "xl/worksheets/sheet";

  private static final String CHARTS = "xl/charts/chart";

  private final WorkbookTemplate template;
  private final XSSFWorkbook workbook;
  private final SheetPlaces places;
  private final List<CalculatedCell> cells;

  private PressMaker(WorkbookTemplate template, LengthUnit unit, XSSFWorkbook workbook) {
    this.template = template;
    this.workbook = workbook;
    this.places = new SheetPlaces(template, unit);
    this.cells = CalculatedCell.all(template, unit);
  }

  /** The press of {@code template} for workbooks in {@code unit}. */
  public static Press of(WorkbookTemplate template, LengthUnit unit) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    WorkbookSetting setting = new WorkbookSetting(unit, Map.of(), Paper.A4);
    new WorkbookCompiler().compileInto(workbook, template, setting);
    return of(template, unit, workbook);
  }

  /**
   * The same.
   *
   * @param workbook what {@code template} alone was compiled into; its inputs are emptied
   */
  static Press of(WorkbookTemplate template, LengthUnit unit, XSSFWorkbook workbook) {
    return new PressMaker(template, unit, workbook).press(unit);
  }

  private Press press(LengthUnit unit) {
    WorkbookValues values = new WorkbookValues(workbook);
    for (InputTemplate input : template.inputs()) {
      values.set(input.name(), input.isWords() ? SharedWords.marked(input) : null);
    }
    List<Part> parts = new ArrayList<>();
    WorkbookPackage.parts(workbook).forEach((name, bytes) -> parts.add(part(name, bytes)));
    List<CellSource> sources = cells.stream().map(CalculatedCell::source).toList();
    return new Press(unit, Form.of(template), sources, parts);
  }

  private Part part(String name, byte[] bytes) {
    if (name.equals(SharedWords.PART)) {
      return SharedWords.slotted(bytes, template.inputs());
    } else if (name.startsWith(CHARTS) && !ChartSlots.of(bytes).isEmpty()) {
      return ChartSlots.slotted(name, bytes);
    } else if (!name.startsWith(SHEETS)) {
      return finished(name, bytes);
    }
    String number = name.substring(SHEETS.length(), name.indexOf(".xml"));
    String sheet = workbook.getSheetName(Integer.parseInt(number) - 1);
    return new SheetSlots(cellsOf(sheet), inputsOf(sheet)).of(name, FillDown.share(bytes));
  }

  private Map<String, Integer> cellsOf(String sheet) {
    Map<String, Integer> indices = new HashMap<>();
    for (int index = 0; index < cells.size(); index++) {
      CalculatedCell cell = cells.get(index);
      if (cell.sheet().equals(sheet)) {
        indices.put(address(cell.row(), cell.column()), index);
      }
    }
    return indices;
  }

  private Map<String, Integer> inputsOf(String sheet) {
    Map<String, Integer> indices = new HashMap<>();
    int index = 0;
    for (InputTemplate input : template.inputs()) {
      Span place = places.names().get(input.name());
      if (place.sheet().equals(sheet)) {
        indices.put(address(place.firstRow(), place.firstColumn()), index);
      }
      index++;
    }
    return indices;
  }

  private static String address(int row, int column) {
    return new CellReference(row, column).formatAsString();
  }

  private static Part finished(String name, byte[] bytes) {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    deflater.setInput(bytes);
    deflater.finish();
    byte[] deflated = new byte[bytes.length + 64];
    int size = deflater.deflate(deflated);
    deflater.end();
    return new Part.Finished(name, bytes.length, crc.getValue(), Arrays.copyOf(deflated, size));
  }
}
