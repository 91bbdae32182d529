package frillbook.press;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.wording.PlanWords;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Many different plans in one process and one thread, and as many files of the plain writer. */
public final class ManyPlans {
  private static final LengthUnit UNIT = LengthUnit.INCH;
  private static final List<String> GRAINS = List.of("crosswise", "lengthwise", "bias");
  private static final int WARMING = 400;
  private static final int SET = 250;
  private static final String HEAD = "%n%-8s %14s %14s %8s %12s%n";
  private static final double NANOS_PER_MILLI = 1e6;

  private final Press press = PackagedPress.of(UNIT);
  private final PlainCells cells;
  private long bytes;

  private ManyPlans(PlainCells cells) {
    this.cells = cells;
  }

  /**
   * Prints a table of deflate levels and one of how many plans are made.
   *
   * @param args where the cells of the plain writer are kept
   */
  public static void main(String[] args) throws IOException {
    ManyPlans plans = new ManyPlans(PlainCells.read(Path.of(args[0])));
    plans.made(WARMING, Press.DEFLATE_LEVEL);
    plans.plain(WARMING);
    System.out.printf(HEAD, "level", "ms a plan", "plain writer", "ratio", "bytes");
    for (int level = 4; level <= 9; level++) {
      plans.compare("" + level, SET, level);
    }
    System.out.printf(HEAD, "plans", "ms a plan", "plain writer", "ratio", "bytes");
    for (int count : List.of(100, 1000, 10_000)) {
      plans.compare("" + count, count, Press.DEFLATE_LEVEL);
    }
  }

  /** In turns, so that both meet the machine as it is. */
  private void compare(String what, int count, int level) throws IOException {
    double ours = 0;
    double plain = 0;
    bytes = 0;
    for (int done = 0; done < count; done += SET) {
      int next = Math.min(SET, count - done);
      ours += made(next, level);
      plain += plain(next);
    }
    System.out.printf(
        Locale.ROOT,
        "%-8s %14.2f %14.2f %8.2f %12d%n",
        what,
        ours / count,
        plain / count,
        ours / plain,
        bytes / count);
  }

  /** Milliseconds of this thread. */
  private double made(int count, int level) {
    long began = now();
    for (int index = 0; index < count; index++) {
      bytes += made(inputs(index), level);
    }
    return (now() - began) / NANOS_PER_MILLI;
  }

  private int made(Map<String, Object> inputs, int level) {
    NamedValues plan = NamedValues.of(Plan.of(Brief.of(UNIT, inputs)));
    NamedValues said = PlanWords.complete(press.form().vocabulary(), UNIT, inputs, plan);
    CellValues engine = new CellValues(press.form(), UNIT, inputs, said);
    return press.fill(press.filling(engine, inputs, Paper.A4), level).length;
  }

  private Map<String, Object> inputs(int index) {
    Map<String, Object> inputs = press.form().presets(UNIT);
    inputs.put("diameter", 12 + index % 97 / 8.0);
    inputs.put("fullness", 2 + index % 89 / 100.0);
    inputs.put("quantity", 1.0 + index % 3);
    inputs.put("grain", GRAINS.get(index / 3 % 3));
    return inputs;
  }

  private double plain(int count) throws IOException {
    long began = now();
    for (int index = 0; index < count; index++) {
      cells.write(new ByteArrayOutputStream(1 << 19));
    }
    return (now() - began) / NANOS_PER_MILLI;
  }

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
