package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.ChartKind;
import frillbook.template.ChartLine;
import frillbook.template.ChartMarker;
import frillbook.template.ChartTemplate;
import frillbook.template.SeriesTemplate;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFCreationHelper;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The jar on its own does what the same code does here, where the whole schemas are at hand. It
 * carries the lite ones; a type they lack is only missed when it is used.
 */
@Execution(ExecutionMode.CONCURRENT)
class PackagedJarTest {
  private static final Path BUILT_IN = Path.of("workbook-templates");

  private static final String WORKBOOK = "org/apache/poi/xssf/usermodel/XSSFWorkbook";

  private static final String YAML = "org/snakeyaml/engine/v2/nodes/Node";

  private static final Path CHARTS = Path.of("src/test/resources/templates/charts");

  @TempDir private static Path shared;

  private static Path templates;

  /** What is asked of both, by what is special about it. */
  private static final Map<String, List<String>> COMMANDS = new LinkedHashMap<>();

  /** What a command says and writes. */
  private record Done(Ran said, byte[] written) {}

  private static final Map<String, Done> HERE = new HashMap<>();
  private static final Map<String, Done> THERE = new HashMap<>();

  @TempDir private Path folder;

  @BeforeAll
  static void runAll() throws IOException, InterruptedException {
    templates = withCharts(Files.createDirectory(shared.resolve("templates")));
    add("every kind of chart", "make", "--templates=" + templates);
    add(
        "on the bias, for Letter paper",
        "make",
        "--unit=cm",
        "--input=grain=bias",
        "--paper=letter");
    // The list of words is a file beside the classes.
    add("a colour named by a word", "make", "--colour=teal");
    // 4/2 − 1/2 − 1 leaves half an inch for rings an inch apart.
    add("no plan", "make", "--diameter=4", "--ring-spacing=1", "--input=centre_gap=1");
    add("the page of a plan that a person changed", "client", changedPlan().toString());
    COMMANDS.put("the plan as JSON", List.of("plan", "--json"));
    for (String what : COMMANDS.keySet()) {
      HERE.put(what, done(what, Ran.run(COMMANDS.get(what).toArray(String[]::new))));
    }
    // A logger that is not there, as a machine may have settled for other programs.
    Map<String, String> logger = Map.of("LOG4J_PROVIDER", "org.example.Nowhere");
    Iterator<Ran> each = JarCommands.run(shared, logger, List.copyOf(COMMANDS.values())).iterator();
    for (String what : COMMANDS.keySet()) {
      THERE.put(what, done(what, each.next()));
    }
  }

  private static void add(String what, String... words) {
    List<String> command = new ArrayList<>(List.of(words));
    command.addAll(List.of("-o", output(what).toString()));
    COMMANDS.put(what, command);
  }

  private static Path output(String what) {
    return shared.resolve(what + ".xlsx");
  }

  /** The file, where one is asked for, is taken away; the other writes it anew. */
  private static Done done(String what, Ran said) throws IOException {
    if (!COMMANDS.get(what).contains("-o")) {
      return new Done(said, new byte[0]);
    }
    byte[] written = Files.readAllBytes(output(what));
    Files.delete(output(what));
    return new Done(said, written);
  }

  /** The built-in templates and a sheet with every kind of chart. */
  private static Path withCharts(Path templates) throws IOException {
    try (Stream<Path> files = Files.list(BUILT_IN)) {
      for (Path file : files.toList()) {
        Files.copy(file, templates.resolve(file.getFileName()));
      }
    }
    for (String file : List.of("coin.yaml", "points.yaml")) {
      Files.copy(CHARTS.resolve(file), templates.resolve(file));
    }
    Path first = templates.resolve("workbook.yaml");
    return Files.writeString(first, "  - coin.yaml\n  - points.yaml\n", StandardOpenOption.APPEND)
        .getParent();
  }

  private static Path changedPlan() throws IOException {
    Typed plan = Typed.made(shared, Ran.SMALL).changed(PackagedJarTest::decorate);
    addOddLink(plan.plan());
    return plan.plan();
  }

  static Set<String> commands() {
    return COMMANDS.keySet();
  }

  /** Nothing is said beside it of what libraries log. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("commands")
  void theSameIsSaidAndWritten(String what) {
    assertEquals(0, HERE.get(what).said().exitCode());
    assertEquals(HERE.get(what).said(), THERE.get(what).said());
    assertArrayEquals(HERE.get(what).written(), THERE.get(what).written());
  }

  @Test
  void everyKindOfChartIsTried() {
    List<ChartTemplate> charts = charts();
    assertEquals(Set.of(ChartKind.values()), all(charts, ChartTemplate::kind));
    List<SeriesTemplate> series = charts.stream().flatMap(c -> c.series().stream()).toList();
    assertEquals(EnumSet.allOf(ChartLine.class), all(series, SeriesTemplate::line));
    assertEquals(EnumSet.allOf(ChartMarker.class), all(series, SeriesTemplate::marker));
  }

  private List<ChartTemplate> charts() {
    return TemplateReader.read(TemplateSource.directory(templates)).sheets().stream()
        .flatMap(sheet -> sheet.rows().stream())
        .filter(ChartTemplate.class::isInstance)
        .map(ChartTemplate.class::cast)
        .toList();
  }

  private static <T, V> Set<V> all(List<T> list, Function<T, V> part) {
    return list.stream().map(part).collect(Collectors.toSet());
  }

  /** Classes of these names that cannot be read stand before the jar. */
  private Ran runWithout(List<String> classes, String... args)
      throws IOException, InterruptedException {
    for (String broken : classes) {
      Path file = folder.resolve(broken + ".class");
      Files.createDirectories(file.getParent());
      Files.write(file, new byte[] {1, 2, 3, 4});
    }
    String path = folder + System.getProperty("path.separator") + PackagedJar.FILE;
    List<String> start = List.of("-cp", path, "frillbook.cli.Frillbook");
    return PackagedJar.run(folder, Map.of(), start, args);
  }

  @Test
  void neitherTheWorkbookLibraryNorTheTemplateReaderIsNeededToMakeAWorkbook()
      throws IOException, InterruptedException {
    Path made = folder.resolve("made.xlsx");
    Ran ran = runWithout(List.of(WORKBOOK, YAML), "make", "-o", made.toString());
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(Files.size(made) > 100_000);
  }

  /** What people do to a workbook beside changing cells. */
  private static void decorate(XSSFWorkbook workbook) {
    XSSFSheet sheet = workbook.createSheet("Mine");
    XSSFCell cell = sheet.createRow(0).createCell(0);
    cell.setCellFormula("price_each*2");
    XSSFCreationHelper help = workbook.getCreationHelper();
    cell.setHyperlink(help.createHyperlink(HyperlinkType.URL));
    cell.getHyperlink().setAddress("https://example.org/");
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFClientAnchor place = drawing.createAnchor(0, 0, 0, 0, 2, 2, 6, 9);
    cell.setCellComment(drawing.createCellComment(place));
    drawing.createTextbox(place).setText("Ask for the sea-green one.");
    drawing.createChart(place);
    sheet.addMergedRegion(CellRangeAddress.valueOf("A3:B4"));
  }

  @Test
  void theProgramIsStartedByTheJarAlone() throws IOException, InterruptedException {
    assertEquals(Ran.run("--version"), PackagedJar.run(folder, "--version"));
  }

  /**
   * A link that cannot be read as an address, as a person may type one, is an error to the workbook
   * library; it would not write one, so it is put into the file itself.
   */
  private static void addOddLink(Path plan) throws IOException {
    String kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink";
    String link =
        "<Relationship Id=\"odd\" Target=\"http://[nowhere\" TargetMode=\"External\" Type=\"%s\"/>"
            .formatted(kind);
    try (FileSystem parts = FileSystems.newFileSystem(plan)) {
      Path links = parts.getPath("/xl/_rels/workbook.xml.rels");
      String end = "</Relationships>";
      Files.writeString(links, Files.readString(links).replace(end, link + end));
    }
  }

  /** A class of the workbook library that the machine cannot load is what nobody foresees. */
  @Test
  void aFaultEndsTheProgramWithOneSentence() throws IOException, InterruptedException {
    Typed plan = Typed.made(folder, Ran.SMALL);
    Ran ran =
        runWithout(
            List.of(WORKBOOK), "client", plan.plan().toString(), "-o", plan.page().toString());
    assertEquals(Ran.refusal(70, ran.err().strip()), ran);
    assertEquals(1, ran.err().lines().count(), ran.err());
  }
}
