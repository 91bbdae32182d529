package frillbook.chart;

import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.xmlbeans.SimpleValue;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChartSpace;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.main.CTPositiveSize2D;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;

/**
 * A chart's place on a sheet: it hangs from one cell and has its own size, so that columns of
 * another width, as another program or typeface may make them, do not stretch it.
 *
 * @param row of the cell at its upper left corner
 * @param column of that cell
 * @param width in points
 * @param height in points
 * @param name in the program's list of objects
 * @param label what it is, for those who cannot see it
 * @param alt what can be seen, for those who cannot
 */
public record ChartPlace(
    int row, int column, double width, double height, String name, String label, String alt) {
  private static final String CHARTS = "http://schemas.openxmlformats.org/drawingml/2006/chart";

  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private static final double EMU_PER_POINT = ChartInk.emu(1);

  /** A chart that is there, and where. */
  public record Hung(ChartPlace place, XSSFChart chart) {
    CTPlotArea plot() {
      return chart.getCTChartSpace().getChart().getPlotArea();
    }
  }

  /** Hangs {@code space} up at this place. */
  public void hang(XSSFSheet sheet, CTChartSpace space) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFClientAnchor corner = drawing.createAnchor(0, 0, 0, 0, column, row, column + 1, row + 1);
    XSSFChart chart = drawing.createChart(corner);
    chart.getCTChartSpace().set(space);
    CTDrawing objects = drawing.getCTDrawing();
    hang(objects, objects.sizeOfTwoCellAnchorArray() - 1);
  }

  /** The library hangs charts from two cells; this one is moved over to one. */
  private void hang(CTDrawing objects, int index) {
    CTTwoCellAnchor stretched = objects.getTwoCellAnchorArray(index);
    CTOneCellAnchor hung = objects.addNewOneCellAnchor();
    hung.setFrom(stretched.getFrom());
    CTPositiveSize2D size = hung.addNewExt();
    size.setCx(ChartInk.emu(width));
    size.setCy(ChartInk.emu(height));
    hung.setGraphicFrame(stretched.getGraphicFrame());
    hung.addNewClientData();
    objects.removeTwoCellAnchor(index);
    tell(hung.getGraphicFrame().getNvGraphicFramePr().getCNvPr());
  }

  private void tell(CTNonVisualDrawingProps properties) {
    properties.setName(name);
    properties.setTitle(label);
    properties.setDescr(alt);
  }

  /** The charts that hang on {@code sheet}, in the order they were hung. */
  public static List<Hung> on(XSSFSheet sheet) {
    return Optional.ofNullable(sheet.getDrawingPatriarch())
        .map(
            drawing ->
                drawing.getCTDrawing().getOneCellAnchorList().stream()
                    .filter(CTOneCellAnchor::isSetGraphicFrame)
                    .map(hung -> hung(drawing, hung))
                    .toList())
        .orElse(List.of());
  }

  private static Hung hung(XSSFDrawing drawing, CTOneCellAnchor hung) {
    CTNonVisualDrawingProps said = hung.getGraphicFrame().getNvGraphicFramePr().getCNvPr();
    ChartPlace place =
        new ChartPlace(
            hung.getFrom().getRow(),
            hung.getFrom().getCol(),
            hung.getExt().getCx() / EMU_PER_POINT,
            hung.getExt().getCy() / EMU_PER_POINT,
            said.getName(),
            said.getTitle(),
            said.getDescr());
    return new Hung(place, (XSSFChart) drawing.getRelationById(part(hung)));
  }

  /** How the drawing calls the chart's part. */
  private static String part(CTOneCellAnchor hung) {
    XmlObject data = hung.getGraphicFrame().getGraphic().getGraphicData();
    XmlObject chart = data.selectChildren(CHARTS, "chart")[0];
    return ((SimpleValue) chart.selectAttribute(RELATIONS, "id")).getStringValue();
  }

  /** The row its lower edge lies in. */
  int lastRow(XSSFSheet sheet) {
    double left = height;
    int last = row;
    for (int next = row; left > 0; next++) {
      XSSFRow line = sheet.getRow(next);
      left -= line == null ? sheet.getDefaultRowHeightInPoints() : line.getHeightInPoints();
      last = next;
    }
    return last;
  }
}
