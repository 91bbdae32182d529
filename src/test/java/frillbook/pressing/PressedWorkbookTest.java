package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import frillbook.ZipParts;
import frillbook.brief.Brief;
import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.press.CellValues;
import frillbook.press.Colour;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Part;
import frillbook.press.Press;
import frillbook.reading.PackagedTemplates;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The file that the program fills is, part for part and cell for cell, what the spreadsheet library
 * compiles, calculates and writes.
 */
final class PressedWorkbookTest {
  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  private static final double SAME = 1e-9;

  private static final Map<LengthUnit, Press> PRESSES = new EnumMap<>(LengthUnit.class);
  private static final Map<Trial, XSSFWorkbook> COMPILED = new HashMap<>();
  private static final Map<Trial, Map<String, byte[]>> WRITTEN = new HashMap<>();

  /** A colour for each paper. */
  private static final Map<Paper, Colour> COLOURS =
      Map.of(Paper.A4, Colour.OURS, Paper.LETTER, new Colour("2E8B57"));

  /** Words that XML writes otherwise, words with spaces at their ends, none, and another paper. */
  private record Trial(LengthUnit unit, Map<String, Object> changes, Paper paper) {
    Map<String, Object> inputs() {
      Map<String, Object> inputs = new LinkedHashMap<>();
      TEMPLATE.inputs().forEach(input -> inputs.put(input.name(), input.preset(unit)));
      inputs.putAll(changes);
      return inputs;
    }

    WorkbookSetting setting() {
      return new WorkbookSetting(unit(), inputs(), paper, COLOURS.get(paper));
    }

    XSSFWorkbook compiled() {
      return COMPILED.computeIfAbsent(
          this,
          trial -> {
            XSSFWorkbook workbook = new XSSFWorkbook();
            new WorkbookCompiler().compileInto(workbook, TEMPLATE, trial.setting());
            return workbook;
          });
    }

    /** The parts of the file as which the library writes it. */
    Map<String, byte[]> written() {
      return WRITTEN.computeIfAbsent(this, trial -> WorkbookPackage.parts(trial.compiled()));
    }

    byte[] pressed() {
      return filled(PackagedPress.of(unit));
    }

    byte[] filled(Press press) {
      NamedValues plan = NamedValues.of(Plan.of(Brief.of(unit(), inputs())));
      CellValues engine = new CellValues(press.form(), unit(), inputs(), plan);
      return press.fill(press.filling(engine, inputs(), paper, COLOURS.get(paper)));
    }
  }

  static List<Trial> trials() {
    List<Trial> all =
        List.of(
            new Trial(
                LengthUnit.INCH,
                Map.of(
                    "grain", "bias", "client_name", "  <Reading & Writing>, “Jura” \uD83E\uDEA1 "),
                Paper.LETTER),
            new Trial(LengthUnit.INCH, Map.of(), Paper.A4),
            new Trial(
                LengthUnit.CM,
                Map.of("diameter", 96.0, "quantity", 12.0, "care_words", ""),
                Paper.A4),
            // The gap leaves no room for a ring: no plan.
            new Trial(LengthUnit.CM, Map.of("diameter", 12.0, "ring_spacing", 7.0), Paper.A4));
    return Sample.of(all, 2);
  }

  /** It was written into a file and read from it. */
  @ParameterizedTest
  @MethodSource("trials")
  void whatTheBuildCompiledIsWhatIsCompiledNow(Trial trial) {
    Press now = PRESSES.computeIfAbsent(trial.unit(), unit -> PressMaker.of(TEMPLATE, unit));
    assertArrayEquals(trial.filled(now), trial.pressed());
  }

  @ParameterizedTest
  @MethodSource("trials")
  void everyPartThatNothingIsFilledIntoIsTheSame(Trial trial) throws IOException {
    Map<String, byte[]> pressed = ZipParts.of(trial.pressed());
    Map<String, byte[]> written = trial.written();
    assertEquals(List.copyOf(written.keySet()), List.copyOf(pressed.keySet()));
    int finished = 0;
    for (Part part : PackagedPress.of(trial.unit()).parts()) {
      if (part instanceof Part.Finished) {
        assertArrayEquals(written.get(part.name()), pressed.get(part.name()), part.name());
        finished++;
      }
    }
    assertTrue(finished > 20, finished + " parts");
  }

  @ParameterizedTest
  @MethodSource("trials")
  void everyChartIsTheSame(Trial trial) throws IOException {
    Map<String, byte[]> pressed = ZipParts.of(trial.pressed());
    Map<String, byte[]> written = trial.written();
    int coloured = 0;
    for (String name : written.keySet()) {
      if (name.startsWith("xl/charts/chart")) {
        assertArrayEquals(written.get(name), pressed.get(name), name);
        String chart = new String(pressed.get(name), StandardCharsets.UTF_8);
        coloured += chart.contains(COLOURS.get(trial.paper()).line()) ? 1 : 0;
      }
    }
    assertTrue(coloured > 1, coloured + " charts");
  }

  /** But for what cells hold: attributes, formulas, merged cells, rules, breaks, paper. */
  @ParameterizedTest
  @MethodSource("trials")
  void everySheetIsTheSameButForItsValues(Trial trial) throws IOException {
    Map<String, byte[]> pressed = ZipParts.of(trial.pressed());
    Map<String, byte[]> written = trial.written();
    int sheets = 0;
    for (String name : written.keySet()) {
      if (name.startsWith("xl/worksheets/sheet")) {
        byte[] shared = FillDown.share(written.get(name));
        assertEquals(withoutValues(shared), withoutValues(pressed.get(name)), name);
        sheets++;
      }
    }
    assertEquals(TEMPLATE.sheets().size(), sheets);
  }

  private static String withoutValues(byte[] sheet) {
    return new String(sheet, StandardCharsets.UTF_8)
        .replaceAll("<v>[^<]*</v>", "")
        .replaceAll("(<c [^>]*?) t=\"(str|s|n)\"", "$1")
        .replaceAll("/>", "></>")
        .replaceAll("</[a-zA-Z]*>", "</>");
  }

  @ParameterizedTest
  @MethodSource("trials")
  void everyCellIsTheSame(Trial trial) throws IOException {
    XSSFWorkbook meant = trial.compiled();
    WorkbookValues values = new WorkbookValues(meant);
    values.recalculate();
    List<String> differences = new ArrayList<>();
    int compared = 0;
    try (XSSFWorkbook pressed = new XSSFWorkbook(new ByteArrayInputStream(trial.pressed()))) {
      for (int sheet = 0; sheet < meant.getNumberOfSheets(); sheet++) {
        for (Row row : meant.getSheetAt(sheet)) {
          for (Cell cell : row) {
            XSSFCell same =
                pressed.getSheetAt(sheet).getRow(cell.getRowIndex()).getCell(cell.getColumnIndex());
            Object expected = values.value((XSSFCell) cell);
            if (!same(expected, WorkbookValues.stored(same)) || !sameKind(cell, same)) {
              differences.add(WorkbookValues.where(same) + " " + expected + " " + same);
            }
            compared++;
          }
        }
      }
    }
    assertEquals(List.of(), differences);
    assertTrue(compared > 20_000, compared + " cells");
  }

  private static boolean sameKind(Cell meant, Cell pressed) {
    boolean formula = meant.getCellType() == CellType.FORMULA;
    return formula == (pressed.getCellType() == CellType.FORMULA);
  }

  private static boolean same(Object one, Object other) {
    return one instanceof Double a && other instanceof Double b
        ? Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a))
        : one.equals(other);
  }
}
