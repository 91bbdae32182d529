package frillbook.chart;

import frillbook.press.Colour;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;

/** The colour of the fabric in a workbook that any program may have saved. */
public final class ChartColour {
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private ChartColour() {}

  /** That of the first petals whose fill is a plain colour; empty where there are none. */
  public static Optional<Colour> of(XSSFWorkbook workbook) {
    return StreamSupport.stream(workbook.spliterator(), false)
        .flatMap(sheet -> charts(sheet).stream())
        .flatMap(chart -> chart.getCTChart().getPlotArea().getRadarChartList().stream())
        .flatMap(petals -> petals.getSerList().stream())
        .map(series -> series.getSpPr())
        .filter(ChartColour::isPlain)
        .map(shape -> new Colour(HEX.formatHex(shape.getSolidFill().getSrgbClr().getVal())))
        .findFirst();
  }

  /** However they hang: a program may hang them otherwise than we do. */
  private static List<XSSFChart> charts(Sheet sheet) {
    XSSFDrawing drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
    return drawing == null ? List.of() : drawing.getCharts();
  }

  private static boolean isPlain(CTShapeProperties shape) {
    return shape != null && shape.isSetSolidFill() && shape.getSolidFill().isSetSrgbClr();
  }
}
