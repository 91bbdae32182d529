package frillbook.chart;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.look.WorkbookSetting;
import frillbook.template.AxisTemplate;
import frillbook.template.ChartKind;
import frillbook.template.ChartTemplate;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTCatAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STAxPos;
import org.openxmlformats.schemas.drawingml.x2006.chart.STCrossBetween;
import org.openxmlformats.schemas.drawingml.x2006.chart.STCrosses;
import org.openxmlformats.schemas.drawingml.x2006.chart.STLblAlgn;
import org.openxmlformats.schemas.drawingml.x2006.chart.STOrientation;
import org.openxmlformats.schemas.drawingml.x2006.chart.STTickLblPos;
import org.openxmlformats.schemas.drawingml.x2006.chart.STTickMark;

/** Writes the axes of a chart: hidden and fixed for a drawing, with numbers where they are read. */
public final class ChartAxes {
  /** What the series call the axes by. */
  static final long CROSSWISE = 1;

  static final long UPWARDS = 2;

  /** Part of a drawing's axis added at each end: a line along the very edge would be cut off. */
  private static final double AIR = 0.015;

  private final ChartTemplate chart;
  private final WorkbookSetting setting;

  ChartAxes(ChartTemplate chart, WorkbookSetting setting) {
    this.chart = chart;
    this.setting = setting;
  }

  void write(CTPlotArea plot) {
    if (chart.kind() == ChartKind.PETALS) {
      round(plot);
    } else if (chart.kind() == ChartKind.BARS) {
      words(plot.addNewCatAx());
      CTValAx lengths = plot.addNewValAx();
      begin(lengths, UPWARDS, STAxPos.B);
      lengths.getScaling().addNewMin().setVal(0);
      end(lengths, CROSSWISE, STCrosses.MAX);
      lengths.getCrossBetween().setVal(STCrossBetween.BETWEEN);
    } else {
      numbers(plot.addNewValAx(), CROSSWISE, UPWARDS, STAxPos.B, chart.x());
      numbers(plot.addNewValAx(), UPWARDS, CROSSWISE, STAxPos.L, chart.y());
    }
  }

  /** The steps round and how far out they reach, from the centre to 1; neither is seen. */
  private static void round(CTPlotArea plot) {
    CTCatAx steps = plot.addNewCatAx();
    steps.addNewAxId().setVal(CROSSWISE);
    steps.addNewScaling().addNewOrientation().setVal(STOrientation.MIN_MAX);
    steps.addNewDelete().setVal(true);
    steps.addNewAxPos().setVal(STAxPos.B);
    steps.addNewCrossAx().setVal(UPWARDS);
    CTValAx out = plot.addNewValAx();
    begin(out, UPWARDS, STAxPos.L);
    out.getScaling().addNewMax().setVal(1);
    out.getScaling().addNewMin().setVal(0);
    out.addNewCrossAx().setVal(CROSSWISE);
    out.addNewCrossBetween().setVal(STCrossBetween.BETWEEN);
  }

  private void numbers(CTValAx axis, long own, long other, STAxPos.Enum side, AxisTemplate said) {
    begin(axis, own, side);
    double air = chart.kind() == ChartKind.DRAWING ? AIR * said.length() : 0;
    said.to().ifPresent(end -> axis.getScaling().addNewMax().setVal(end + air));
    said.from().ifPresent(end -> axis.getScaling().addNewMin().setVal(end - air));
    if (chart.kind() != ChartKind.DRAWING) {
      read(axis, said);
    }
    end(axis, other, STCrosses.MIN);
  }

  private static void begin(CTValAx axis, long own, STAxPos.Enum side) {
    axis.addNewAxId().setVal(own);
    axis.addNewScaling().addNewOrientation().setVal(STOrientation.MIN_MAX);
    axis.addNewDelete().setVal(true);
    axis.addNewAxPos().setVal(side);
  }

  private static void end(CTValAx axis, long other, STCrosses.Enum where) {
    axis.addNewCrossAx().setVal(other);
    axis.addNewCrosses().setVal(where);
    axis.addNewCrossBetween().setVal(STCrossBetween.MID_CAT);
  }

  /** Shows the axis, with pale lines to read along. */
  private void read(CTValAx axis, AxisTemplate said) {
    axis.getDelete().setVal(false);
    ChartInk.rule(axis.addNewMajorGridlines().addNewSpPr(), Look.HAIRLINE);
    if (!said.label().isEmpty()) {
      title(axis.addNewTitle(), setting.say(said.label()), axis.getAxPos().getVal() == STAxPos.L);
    }
    axis.addNewNumFmt().setFormatCode(NumberFormats.GENERAL);
    // As the cells are written, percent and all.
    axis.getNumFmt().setSourceLinked(true);
    axis.addNewMajorTickMark().setVal(STTickMark.OUT);
    axis.addNewMinorTickMark().setVal(STTickMark.NONE);
    axis.addNewTickLblPos().setVal(STTickLblPos.LOW);
    ChartInk.rule(axis.addNewSpPr(), Look.TEXT);
    ChartInk.letters(axis.addNewTxPr());
  }

  private static void title(CTTitle title, String words, boolean upwards) {
    ChartInk.words(title.addNewTx().addNewRich(), words, upwards);
    title.addNewOverlay().setVal(false);
  }

  /** The bars' words, from the top in the order of the table. */
  private static void words(CTCatAx axis) {
    axis.addNewAxId().setVal(CROSSWISE);
    axis.addNewScaling().addNewOrientation().setVal(STOrientation.MAX_MIN);
    axis.addNewDelete().setVal(false);
    axis.addNewAxPos().setVal(STAxPos.L);
    axis.addNewMajorTickMark().setVal(STTickMark.NONE);
    axis.addNewMinorTickMark().setVal(STTickMark.NONE);
    axis.addNewTickLblPos().setVal(STTickLblPos.LOW);
    ChartInk.rule(axis.addNewSpPr(), Look.TEXT);
    ChartInk.letters(axis.addNewTxPr());
    axis.addNewCrossAx().setVal(UPWARDS);
    axis.addNewCrosses().setVal(STCrosses.AUTO_ZERO);
    axis.addNewAuto().setVal(true);
    axis.addNewLblAlgn().setVal(STLblAlgn.CTR);
    axis.addNewNoMultiLvlLbl().setVal(true);
  }
}
