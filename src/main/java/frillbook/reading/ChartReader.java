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

  /** Far more than the steps of any picture. */
  private static final int MOST_TURN = 1000;

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
            kind != ChartKind.PETALS && block.flag("smooth"),
            axis(block, kind, "x_axis"),
            axis(block, kind, "y_axis"),
            series(block, kind),
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
    if (!fits && block.node("height").isPresent()) {
      tellNumber(
          block, "height", "a whole number of rows from " + LEAST_HEIGHT + " to " + MOST_HEIGHT);
    }
    return fits ? (int) height : LEAST_HEIGHT;
  }

  private static AxisTemplate axis(Block chart, ChartKind kind, String key) {
    // Petals have no axes; one that is written is a key that nobody reads.
    return Optional.of(chart)
        .filter(any -> kind != ChartKind.PETALS)
        .flatMap(any -> any.node(key))
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

  private static List<SeriesTemplate> series(Block chart, ChartKind kind) {
    List<SeriesTemplate> series = new ArrayList<>();
    chart.items("series").forEach(node -> readSeries(node, chart.scope(), kind, series));
    return series;
  }

  private static void readSeries(
      Node node, Scope scope, ChartKind kind, List<SeriesTemplate> series) {
    Block block = new Block(node, scope, "series");
    if (block.firstKey().equals("each")) {
      Each.expand(block, "series", (inner, with) -> readSeries(inner, with, kind, series));
    } else {
      series.add(kind == ChartKind.PETALS ? petals(block) : oneSeries(block));
      block.done();
    }
  }

  private static SeriesTemplate oneSeries(Block block) {
    SeriesTemplate series =
        new SeriesTemplate(
            Optional.of(column(block, "x")),
            column(block, "y"),
            word(block, "line", ChartLine.MEDIUM),
            word(block, "marker", ChartMarker.NONE),
            block.text("label").orElse(""),
            Optional.empty(),
            block.position());
    tellUnseen(series, block);
    return series;
  }

  private static SeriesTemplate petals(Block block) {
    return new SeriesTemplate(
        Optional.empty(),
        column(block, "y"),
        word(block, "line", ChartLine.NONE),
        ChartMarker.NONE,
        "",
        Optional.of(new SeriesTemplate.Petal(fill(block), turn(block))),
        block.position());
  }

  private static double fill(Block block) {
    double fill = block.number("fill");
    if (fill < 0 || fill > 1) {
      tellNumber(block, "fill", "a share from 0 to 1");
    }
    return fill;
  }

  private static int turn(Block block) {
    double turn = block.node("turn").isEmpty() ? 0 : block.number("turn");
    if (turn < 0 || turn > MOST_TURN || turn != Math.rint(turn)) {
      tellNumber(block, "turn", "a whole number of rows from 0 to " + MOST_TURN);
      return 0;
    }
    return (int) turn;
  }

  private static void tellNumber(Block block, String key, String expected) {
    SourceText written = block.requiredRawText(key);
    block.scope().tell(written.position(), key + ": " + written, expected, "correct it");
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
