package frillbook.chart;

import frillbook.look.TextMeasure;
import frillbook.template.ChartKind;
import frillbook.template.ChartTemplate;
import frillbook.template.SeriesTemplate;

/**
 * How large a chart is, and where in it the points are drawn.
 *
 * <p>A drawing's plot has the proportions of its axes, so that a circle stays a circle: axes from
 * −1 to 1 and from −0.5 to 0.5 give a plot twice as wide as high. The frame is no wider than plot
 * and key need. Petals have a square. Other charts take the sheet's width up to a limit.
 *
 * @param width of the whole, in points
 * @param height of the whole, in points
 * @param plot where the points are drawn
 */
public record ChartFrame(double width, double height, Plot plot) {
  /** Of the rows a chart lies on, in points. */
  public static final double ROW_HEIGHT = 16;

  private static final double MARGIN = 6;

  /** Part of a frame of petals left free at each side, as a line along the edge is cut off. */
  private static final double EDGE = 0.02;

  /** Room under a drawing for the key. */
  private static final double KEY_HEIGHT = 26;

  /** Length of line shown for a series in the key, with the gaps about it. */
  private static final double KEY_SAMPLE = 44;

  /** Beyond this a chart with axes reads no better. */
  private static final double WIDEST = 560;

  /** Parts of the frame's width and height; only a drawing's is settled by us. */
  record Plot(double left, double top, double width, double height) {}

  public static ChartFrame of(ChartTemplate chart, double sheetWidth) {
    double height = chart.height() * ROW_HEIGHT;
    if (chart.kind() == ChartKind.PETALS) {
      double side = Math.min(height, sheetWidth);
      return new ChartFrame(side, side, new Plot(EDGE, EDGE, 1 - 2 * EDGE, 1 - 2 * EDGE));
    }
    if (chart.kind() != ChartKind.DRAWING) {
      return new ChartFrame(Math.min(sheetWidth, WIDEST), height, new Plot(0, 0, 1, 1));
    }
    double key = hasKey(chart) ? KEY_HEIGHT : 0;
    double tall = height - 2 * MARGIN - key;
    double proportion = chart.x().length() / chart.y().length();
    double across = Math.min(tall * proportion, sheetWidth - 2 * MARGIN);
    double width = Math.min(sheetWidth, Math.max(across + 2 * MARGIN, keyWidth(chart)));
    return drawing(width, across, across / proportion, key);
  }

  private static ChartFrame drawing(double width, double across, double upwards, double key) {
    double height = upwards + 2 * MARGIN + key;
    double left = (width - across) / 2;
    return new ChartFrame(
        width, height, new Plot(left / width, MARGIN / height, across / width, upwards / height));
  }

  static boolean hasKey(ChartTemplate chart) {
    return chart.series().stream().anyMatch(each -> !each.label().isEmpty());
  }

  private static double keyWidth(ChartTemplate chart) {
    return chart.series().stream()
        .map(SeriesTemplate::label)
        .filter(label -> !label.isEmpty())
        .mapToDouble(label -> KEY_SAMPLE + TextMeasure.width(label, ChartInk.LETTERS))
        .sum();
  }
}
