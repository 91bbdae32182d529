package frillbook.workbook;

import frillbook.chart.ChartFrame;
import frillbook.chart.ChartPlace;
import frillbook.chart.ChartSpace;
import frillbook.look.Look;
import frillbook.look.WorkbookSetting;
import frillbook.template.ChartTemplate;

/** Writes charts: the sentence above, the rows a chart lies on, the chart itself. */
final class ChartWriter {
  /** Rows beside those a chart lies on: the sentence above and a free one below. */
  static final int MORE_ROWS = 2;

  private final Page page;
  private final SheetPlaces places;
  private final TextWriter texts;

  ChartWriter(Page page, SheetPlaces places, TextWriter texts) {
    this.page = page;
    this.places = places;
    this.texts = texts;
  }

  void chart(int row, ChartTemplate chart) {
    if (chart.isTitled()) {
      texts.chartTitle(row, chart.sentence());
      if (page.firstColumn() == 0) {
        makeRoom(row, chart.height() + MORE_ROWS);
      }
    }
    ChartFrame frame = ChartFrame.of(chart, page.width());
    WorkbookSetting setting = page.setting();
    new ChartPlace(
            row + (chart.isTitled() ? 1 : 0),
            page.firstColumn(),
            frame.width(),
            frame.height(),
            chart.name(),
            setting.say(chart.label()),
            setting.say(chart.alt()))
        .hang(page.sheet(), ChartSpace.of(chart, frame, places.names(), setting));
  }

  /** Beside other rows a chart has the room that those take. */
  private void makeRoom(int row, int rows) {
    for (int under = 1; under < rows; under++) {
      page.cell(row + under, 0, page.styles().of(Look.NOTE));
      page.heighten(row + under, ChartFrame.ROW_HEIGHT);
    }
  }
}
