package frillbook.reading;

import frillbook.source.SourceText;
import frillbook.template.AxisTemplate;
import frillbook.template.ChartKind;
import frillbook.template.ChartLine;
import frillbook.template.ChartMarker;
import frillbook.template.ChartTemplate;
import frillbook.template.SeriesTemplate;
import frillbook.template.WordingText;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a chart with its axes and series. */
public final class ChartReader {
  private static final int LEAST_HEIGHT = 6;

  /** A printed page has room for about as many. */
  private static final int MOST_HEIGHT = 40;

  private ChartReader() {}

  static ChartTemplate read(Block block) {
    SourceText name = block.requiredRawText("picture");
    block.call("picture " + name);
    ChartKind kind = block.word("kind", ChartKind.DRAWING);
    ChartTemplate chart =
        new ChartTemplate(
            name.value(),
            block.requiredText("label"),
            kind,
            block.has("title") ? RowReader.wording(block, "title") : noTitle(block),
            RowReader.guard(block, "plan_ok"),
            block.requiredText("alt"),
            height(block),
            block.flag("smooth"),
            axis(block, kind, "x_axis"),
            axis(block, kind, "y_axis"),
            series(block),
            block.position());
    tellNoSeries(chart, block);
    block.done();
    return chart;
  }

  private static WordingText noTitle(Block block) {
    return new WordingText(new Wording(List.of()), block.position(), Map.of());
  }

  private static int height(Block block) {
    double height = block.number("height");
    boolean fits = height >= LEAST_HEIGHT && height <= MOST_HEIGHT && height == Math.rint(height);
    block
        .rawText("height")
        .filter(written -> !fits)
        .ifPresent(
            written ->
                block
                    .scope()
                    .tell(
                        written.position(),
                        "height: " + written,
                        "a whole number of rows from " + LEAST_HEIGHT + " to " + MOST_HEIGHT,
                        "correct it"));
    return fits ? (int) height : LEAST_HEIGHT;
  }

  private static AxisTemplate axis(Block chart, ChartKind kind, String key) {
    return chart
        .node(key)
        .flatMap(node -> chart.block(key))
        .map(block -> axis(block, kind))
        .orElseGet(() -> AxisTemplate.plain(kind));
  }

  private static AxisTemplate axis(Block block, ChartKind kind) {
    String label = block.text("label").orElse("");
    AxisTemplate axis = AxisTemplate.of(kind, label, end(block, "from"), end(block, "to"));
    if (axis.isReversed()) {
      block
          .scope()
          .tell(
              block.position(),
              "an axis from " + axis.from().get() + " to " + axis.to().get(),
              "from below to",
              "correct from or to");
    }
    block.done();
    return axis;
  }

  private static Optional<Double> end(Block block, String key) {
    return block.node(key).map(node -> block.number(key));
  }

  private static List<SeriesTemplate> series(Block chart) {
    List<SeriesTemplate> series = new ArrayList<>();
    chart.items("series").forEach(node -> readSeries(node, chart.scope(), series));
    return series;
  }

  private static void readSeries(Node node, Scope scope, List<SeriesTemplate> series) {
    Block block = new Block(node, scope, "series");
    if (block.firstKey().equals("each")) {
      Each.expand(block, "series", (inner, with) -> readSeries(inner, with, series));
    } else {
      series.add(oneSeries(block));
    }
  }

  private static SeriesTemplate oneSeries(Block block) {
    SeriesTemplate series =
        new SeriesTemplate(
            column(block, "x"),
            column(block, "y"),
            word(block, "line", ChartLine.MEDIUM),
            word(block, "marker", ChartMarker.NONE),
            block.text("label").orElse(""),
            block.position());
    tellUnseen(series, block);
    block.done();
    return series;
  }

  private static SeriesTemplate.Column column(Block block, String key) {
    SourceText name = block.requiredRawText(key);
    return new SeriesTemplate.Column(name.value(), name.position());
  }

  private static <E extends Enum<E>> E word(Block block, String key, E preset) {
    return block.node(key).isEmpty() ? preset : block.word(key, preset);
  }

  private static void tellUnseen(SeriesTemplate series, Block block) {
    if (series.line() == ChartLine.NONE && series.marker() == ChartMarker.NONE) {
      block
          .scope()
          .tell(
              series.position(),
              "a series with neither line nor marker",
              "one of the two",
              "write line: thin or marker: dot");
    }
  }

  private static void tellNoSeries(ChartTemplate chart, Block block) {
    if (chart.series().isEmpty() && block.node("series").isPresent()) {
      block
          .scope()
          .tell(
              chart.position(),
              "picture " + chart.name() + " with no series",
              "at least one",
              "write series: [{x: …, y: …}]");
    }
  }
}
