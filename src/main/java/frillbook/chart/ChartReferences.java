package frillbook.chart;

import frillbook.look.Span;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTAxDataSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumDataSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrRef;

/** Goes through the references of a chart to the cells that feed it, series by series. */
public final class ChartReferences {
  private final Consumer<CTNumRef> numbers;
  private final Consumer<CTStrRef> words;

  private ChartReferences(Consumer<CTNumRef> numbers, Consumer<CTStrRef> words) {
    this.numbers = numbers;
    this.words = words;
  }

  public static void each(CTPlotArea plot, Consumer<CTNumRef> numbers, Consumer<CTStrRef> words) {
    ChartReferences all = new ChartReferences(numbers, words);
    plot.getScatterChartList().forEach(chart -> chart.getSerList().forEach(all::series));
    plot.getRadarChartList()
        .forEach(chart -> chart.getSerList().forEach(series -> all.data(series.getVal())));
    plot.getBarChartList().forEach(chart -> chart.getSerList().forEach(all::series));
  }

  private void series(CTScatterSer series) {
    data(series.getXVal());
    data(series.getYVal());
  }

  private void series(CTBarSer series) {
    data(series.getCat());
    data(series.getVal());
  }

  private void data(CTAxDataSource data) {
    if (data.isSetNumRef()) {
      numbers.accept(data.getNumRef());
    } else if (data.isSetStrRef()) {
      words.accept(data.getStrRef());
    }
  }

  private void data(CTNumDataSource data) {
    if (data.isSetNumRef()) {
      numbers.accept(data.getNumRef());
    }
  }

  /** The rectangle of a reference. */
  public static Span span(String reference) {
    AreaReference area = new AreaReference(reference, SpreadsheetVersion.EXCEL2007);
    CellReference first = area.getFirstCell();
    CellReference last = area.getLastCell();
    return new Span(
        first.getSheetName(), first.getRow(), last.getRow(), first.getCol(), last.getCol());
  }

  /** The cells of a reference; {@code null} for one that is not there. */
  public static List<XSSFCell> cells(XSSFWorkbook workbook, String reference) {
    AreaReference area = new AreaReference(reference, SpreadsheetVersion.EXCEL2007);
    return Arrays.stream(area.getAllReferencedCells()).map(at -> cell(workbook, at)).toList();
  }

  private static XSSFCell cell(XSSFWorkbook workbook, CellReference place) {
    XSSFRow row = workbook.getSheet(place.getSheetName()).getRow(place.getRow());
    return row == null ? null : row.getCell(place.getCol());
  }
}
