package frillbook.press;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How long {@code make} takes beside a plain writer of the same cells (fastexcel, which writes
 * neither looks nor the values of formulas): as whole processes, in turns, and many plans in one
 * process of 256 MB. Memory is the most that was resident, which Linux alone tells.
 */
public final class PressBenchmark {
  private static final int RUNS = 15;
  private static final double NANOS_PER_MILLI = 1e6;

  private final Path jar;
  private final Path folder;
  private final Path cells;

  private PressBenchmark(Path jar, Path folder) {
    this.jar = jar;
    this.folder = folder;
    this.cells = folder.resolve("cells");
  }

  /** What one process took. */
  private record Run(double millis, double megabytes) {}

  /**
   * Prints both tables.
   *
   * @param args the packaged program
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("press-benchmark");
    try {
      new PressBenchmark(Path.of(args[0]).toAbsolutePath(), folder).run();
    } finally {
      try (Stream<Path> left = Files.walk(folder)) {
        left.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
      }
    }
  }

  private void run() throws IOException, InterruptedException {
    PlainCells plain = PlainCells.of(preset());
    plain.save(cells);
    System.out.println(plain.count() + " cells that are not empty");
    List<Run> ours = new ArrayList<>();
    List<Run> peers = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      ours.add(run("-jar", jar.toString(), "make", "--force", "-o", folder + "/made.xlsx"));
      peers.add(run(classes(PlainWriter.class, cells.toString(), folder + "/plain.xlsx")));
    }
    System.out.printf("%n%-14s %12s %10s%n", "cold", "median ms", "most MB");
    print("make", ours);
    print("plain writer", peers);
    System.out.printf(Locale.ROOT, "ratio %.2f%n", median(ours) / median(peers));
    start(ProcessBuilder.Redirect.INHERIT, classes(ManyPlans.class, "-Xmx256m", cells.toString()))
        .waitFor();
  }

  private static XSSFWorkbook preset() throws IOException {
    LengthUnit unit = LengthUnit.INCH;
    Press press = PackagedPress.of(unit);
    Map<String, Object> inputs = press.form().presets(unit);
    NamedValues plan = NamedValues.of(Plan.of(Brief.of(unit, inputs)));
    CellValues engine = new CellValues(press.form(), unit, inputs, plan);
    byte[] file = press.fill(press.filling(engine, inputs, Paper.A4));
    return new XSSFWorkbook(new ByteArrayInputStream(file));
  }

  private static void print(String what, List<Run> runs) {
    double most = runs.stream().mapToDouble(Run::megabytes).max().orElseThrow();
    System.out.printf(Locale.ROOT, "%-14s %12.0f %10.0f%n", what, median(runs), most);
  }

  private static double median(List<Run> runs) {
    double[] millis = runs.stream().mapToDouble(Run::millis).sorted().toArray();
    return millis[millis.length / 2];
  }

  /** The options of the virtual machine come first among {@code args}. */
  private static String[] classes(Class<?> program, String... args) {
    List<String> line = new ArrayList<>();
    List<String> rest = new ArrayList<>();
    Arrays.stream(args).forEach(arg -> (arg.startsWith("-X") ? line : rest).add(arg));
    line.addAll(List.of("-cp", classPath(), program.getName()));
    line.addAll(rest);
    return line.toArray(String[]::new);
  }

  /** Of this class and the libraries; Maven keeps it from the system's own. */
  private static String classPath() {
    List<String> places = new ArrayList<>();
    ClassLoader loader = PressBenchmark.class.getClassLoader();
    for (java.net.URL place : ((java.net.URLClassLoader) loader).getURLs()) {
      places.add(Path.of(place.getPath()).toString());
    }
    return String.join(java.io.File.pathSeparator, places);
  }

  private static Process start(ProcessBuilder.Redirect said, String... line) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(line));
    return new ProcessBuilder(command)
        .redirectOutput(said)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static Run run(String... line) throws IOException, InterruptedException {
    long began = System.nanoTime();
    Process process = start(ProcessBuilder.Redirect.DISCARD, line);
    Path status = Path.of("/proc", Long.toString(process.pid()), "status");
    double most = 0;
    while (process.isAlive()) {
      most = Math.max(most, resident(status));
      Thread.sleep(2);
    }
    return new Run((System.nanoTime() - began) / NANOS_PER_MILLI, most);
  }

  private static double resident(Path status) {
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
          .findFirst()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException e) {
      return 0;
    }
  }
}
