package frillbook.calculation;

import frillbook.brief.Grain;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.PackagedTemplates;
import frillbook.workbook.WorkbookCompiler;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.ObjIntConsumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How long the workbook takes to calculate every formula anew after one input has changed.
 *
 * <p>For each grain, without matching discs and with one: three cushions in centimetres and euros,
 * all else as preset, the fullness going round from 2 to 2.6. All of them are calculated a while
 * before any is measured, until the virtual machine has settled.
 */
public final class RecalculationBenchmark {
  private static final int WARMING = 50;

  private static final int MEASURED = 100;

  private static final double NANOS_PER_MILLI = 1e6;

  private final WorkbookValues values = new WorkbookValues(compiled());

  private RecalculationBenchmark() {}

  public static void main(String[] args) {
    RecalculationBenchmark benchmark = new RecalculationBenchmark();
    System.out.printf("%d formula cells%n%n", benchmark.values.formulaCells().size());
    benchmark.eachCushion((grain, matchingDiscs) -> benchmark.millis(WARMING));
    System.out.printf("%-8s %8s %10s %10s%n", "grain", "matching discs", "median ms", "worst ms");
    benchmark.eachCushion(
        (grain, matchingDiscs) -> print(grain, matchingDiscs, benchmark.millis(MEASURED)));
  }

  private static XSSFWorkbook compiled() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(
            workbook,
            PackagedTemplates.template(),
            new WorkbookSetting(LengthUnit.CM, Map.of("quantity", 3.0), Paper.A4));
    return workbook;
  }

  private void eachCushion(ObjIntConsumer<String> then) {
    for (Grain grain : Grain.values()) {
      for (int matchingDiscs = 0; matchingDiscs <= 1; matchingDiscs++) {
        values.set("grain", grain.code());
        values.set("matching_discs", (double) matchingDiscs);
        then.accept(grain.code(), matchingDiscs);
      }
    }
  }

  private static void print(String grain, int matchingDiscs, double[] millis) {
    System.out.printf(
        Locale.ROOT,
        "%-8s %8d %10.1f %10.1f%n",
        grain,
        matchingDiscs,
        (millis[(millis.length - 1) / 2] + millis[millis.length / 2]) / 2,
        millis[millis.length - 1]);
  }

  /** From the shortest to the longest. */
  private double[] millis(int times) {
    double[] millis = new double[times];
    for (int i = 0; i < times; i++) {
      values.set("fullness", 2 + i % 7 / 10.0);
      long began = System.nanoTime();
      values.recalculate();
      millis[i] = (System.nanoTime() - began) / NANOS_PER_MILLI;
      requirePlan();
    }
    Arrays.sort(millis);
    return millis;
  }

  /** Without a plan most cells are blank, and fast. */
  private void requirePlan() {
    if (!values.value("cut_ok").equals(1.0)) {
      throw new IllegalStateException("there is no plan");
    }
  }
}
