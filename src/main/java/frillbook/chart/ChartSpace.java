package frillbook.chart;

import frillbook.look.Span;
import frillbook.look.WorkbookSetting;
import frillbook.template.ChartKind;
import frillbook.template.ChartTemplate;
import java.util.Map;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChartSpace;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTLegend;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTManualLayout;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutMode;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLayoutTarget;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLegendPos;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;

/**
 * Writes a chart's own part, in the terms of the schema (ISO/IEC 29500-1, 21.2).
 *
 * <p>The title stands in the cell above and not in here: LibreOffice keeps the words a title had
 * when the file was opened, and a number that no longer holds would be worse than none.
 */
public final class ChartSpace {
  private final ChartTemplate chart;
  private final ChartFrame frame;

  private ChartSpace(ChartTemplate chart, ChartFrame frame) {
    this.chart = chart;
    this.frame = frame;
  }

  /** The chart of {@code template}, fed by the cells of {@code columns}. */
  public static CTChartSpace of(
      ChartTemplate template,
      ChartFrame frame,
      Map<String, Span> columns,
      WorkbookSetting setting) {
    CTChartSpace space = CTChartSpace.Factory.newInstance();
    space.addNewRoundedCorners().setVal(false);
    CTChart drawn = space.addNewChart();
    drawn.addNewAutoTitleDeleted().setVal(true);
    CTPlotArea plot = drawn.addNewPlotArea();
    new ChartSpace(template, frame).place(plot);
    new ChartSeries(template, columns, setting).write(plot);
    new ChartAxes(template, setting).write(plot);
    plot.addNewSpPr().addNewNoFill();
    if (ChartFrame.hasKey(template)) {
      key(drawn.addNewLegend(), template);
    }
    // The points stay drawn when their sheet or rows are hidden.
    drawn.addNewPlotVisOnly().setVal(false);
    drawn.addNewDispBlanksAs().setVal(STDispBlanksAs.GAP);
    ground(template, space.addNewSpPr());
    space.getSpPr().addNewLn().addNewNoFill();
    ChartInk.letters(space.addNewTxPr());
    return space;
  }

  /** Petals leave what stands in the cells under them to be read where there are none. */
  private static void ground(ChartTemplate template, CTShapeProperties shape) {
    if (template.kind() == ChartKind.PETALS) {
      shape.addNewNoFill();
    } else {
      ChartInk.fill(shape, ChartInk.PAPER);
    }
  }

  /**
   * Settles where a drawing's points and petals lie; a program would choose by itself, and stretch
   * them.
   */
  private void place(CTPlotArea plot) {
    if (chart.kind() != ChartKind.DRAWING && chart.kind() != ChartKind.PETALS) {
      plot.addNewLayout();
      return;
    }
    CTManualLayout layout = plot.addNewLayout().addNewManualLayout();
    layout.addNewLayoutTarget().setVal(STLayoutTarget.INNER);
    layout.addNewXMode().setVal(STLayoutMode.EDGE);
    layout.addNewYMode().setVal(STLayoutMode.EDGE);
    layout.addNewX().setVal(frame.plot().left());
    layout.addNewY().setVal(frame.plot().top());
    layout.addNewW().setVal(frame.plot().width());
    layout.addNewH().setVal(frame.plot().height());
  }

  private static void key(CTLegend key, ChartTemplate chart) {
    key.addNewLegendPos().setVal(STLegendPos.B);
    for (int index = 0; index < chart.series().size(); index++) {
      if (chart.series().get(index).label().isEmpty()) {
        var left = key.addNewLegendEntry();
        left.addNewIdx().setVal(index);
        left.addNewDelete().setVal(true);
      }
    }
    key.addNewOverlay().setVal(false);
    ChartInk.letters(key.addNewTxPr());
  }
}
