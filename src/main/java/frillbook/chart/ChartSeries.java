package frillbook.chart;

import frillbook.look.Look;
import frillbook.look.Span;
import frillbook.look.WorkbookSetting;
import frillbook.template.ChartKind;
import frillbook.template.ChartLine;
import frillbook.template.ChartMarker;
import frillbook.template.ChartTemplate;
import frillbook.template.SeriesTemplate;
import java.util.Map;
import javax.xml.namespace.QName;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarkerSize;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTRadarChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTRadarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.STBarDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.STBarGrouping;
import org.openxmlformats.schemas.drawingml.x2006.chart.STMarkerStyle;
import org.openxmlformats.schemas.drawingml.x2006.chart.STRadarStyle;
import org.openxmlformats.schemas.drawingml.x2006.chart.STScatterStyle;

/** Writes the series of a chart, each fed by the cells of two columns. */
public final class ChartSeries {
  private static final String MARK_POINTS = "5";

  private static final QName VALUE = new QName("val");

  /** Between two bars, in percent of a bar. */
  private static final int BAR_GAP = 60;

  private final ChartTemplate chart;
  private final Map<String, Span> columns;
  private final WorkbookSetting setting;

  ChartSeries(ChartTemplate chart, Map<String, Span> columns, WorkbookSetting setting) {
    this.chart = chart;
    this.columns = columns;
    this.setting = setting;
  }

  void write(CTPlotArea plot) {
    if (chart.kind() == ChartKind.PETALS) {
      petals(plot.addNewRadarChart());
    } else if (chart.kind() == ChartKind.BARS) {
      bars(plot.addNewBarChart());
    } else {
      lines(plot.addNewScatterChart());
    }
  }

  private void lines(CTScatterChart lines) {
    lines.addNewScatterStyle().setVal(STScatterStyle.LINE_MARKER);
    lines.addNewVaryColors().setVal(false);
    for (SeriesTemplate series : chart.series()) {
      line(lines.addNewSer(), lines.sizeOfSerArray() - 1L, series);
    }
    lines.addNewAxId().setVal(ChartAxes.CROSSWISE);
    lines.addNewAxId().setVal(ChartAxes.UPWARDS);
  }

  private void line(CTScatterSer drawn, long index, SeriesTemplate series) {
    drawn.addNewIdx().setVal(index);
    drawn.addNewOrder().setVal(index);
    if (!series.label().isEmpty()) {
      drawn.addNewTx().setV(setting.say(series.label()));
    }
    if (series.line() == ChartLine.TINT) {
      ChartInk.tint(drawn.addNewSpPr(), setting.colour());
    } else {
      ChartInk.stroke(drawn.addNewSpPr(), series.line());
    }
    mark(drawn.addNewMarker(), series.marker());
    drawn.addNewXVal().addNewNumRef().setF(cells(series.x().orElseThrow()));
    drawn.addNewYVal().addNewNumRef().setF(cells(series.y()));
    drawn.addNewSmooth().setVal(chart.smooth());
  }

  private static void mark(CTMarker drawn, ChartMarker marker) {
    if (marker == ChartMarker.NONE) {
      drawn.addNewSymbol().setVal(STMarkerStyle.NONE);
      return;
    }
    boolean filled = marker == ChartMarker.DOT;
    drawn.addNewSymbol().setVal(filled ? STMarkerStyle.CIRCLE : STMarkerStyle.SQUARE);
    size(drawn.addNewSize());
    ChartInk.fill(drawn.addNewSpPr(), filled ? Look.TEXT : ChartInk.PAPER);
    ChartInk.rule(drawn.getSpPr(), Look.TEXT);
  }

  /** Written as bare text: the lite schemas do not know the type of this one number. */
  private static void size(CTMarkerSize size) {
    try (XmlCursor attributes = size.newCursor()) {
      attributes.setAttributeText(VALUE, MARK_POINTS);
    }
  }

  private void petals(CTRadarChart petals) {
    petals.addNewRadarStyle().setVal(STRadarStyle.FILLED);
    petals.addNewVaryColors().setVal(false);
    for (SeriesTemplate series : chart.series()) {
      petal(petals.addNewSer(), petals.sizeOfSerArray() - 1L, series, series.petal().orElseThrow());
    }
    petals.addNewAxId().setVal(ChartAxes.CROSSWISE);
    petals.addNewAxId().setVal(ChartAxes.UPWARDS);
  }

  private void petal(
      CTRadarSer drawn, long index, SeriesTemplate series, SeriesTemplate.Petal petal) {
    drawn.addNewIdx().setVal(index);
    drawn.addNewOrder().setVal(index);
    ChartInk.petal(drawn.addNewSpPr(), series.line(), petal.fill(), setting.colour());
    Span column = columns.get(series.y().name());
    int rows = column.lastRow() - column.firstRow() + 1 - chart.mostTurn();
    Span round =
        Span.column(column.sheet(), column.firstRow() + petal.turn(), rows, column.firstColumn());
    drawn.addNewVal().addNewNumRef().setF(round.reference());
  }

  private void bars(CTBarChart bars) {
    bars.addNewBarDir().setVal(STBarDir.BAR);
    bars.addNewGrouping().setVal(STBarGrouping.CLUSTERED);
    bars.addNewVaryColors().setVal(false);
    for (SeriesTemplate series : chart.series()) {
      bar(bars.addNewSer(), bars.sizeOfSerArray() - 1L, series);
    }
    bars.addNewGapWidth().setVal(BAR_GAP);
    bars.addNewAxId().setVal(ChartAxes.CROSSWISE);
    bars.addNewAxId().setVal(ChartAxes.UPWARDS);
  }

  private void bar(CTBarSer drawn, long index, SeriesTemplate series) {
    drawn.addNewIdx().setVal(index);
    drawn.addNewOrder().setVal(index);
    if (!series.label().isEmpty()) {
      drawn.addNewTx().setV(setting.say(series.label()));
    }
    ChartInk.fill(drawn.addNewSpPr(), Look.INK);
    drawn.addNewInvertIfNegative().setVal(false);
    drawn.addNewCat().addNewStrRef().setF(cells(series.x().orElseThrow()));
    drawn.addNewVal().addNewNumRef().setF(cells(series.y()));
  }

  private String cells(SeriesTemplate.Column column) {
    return columns.get(column.name()).reference();
  }
}
