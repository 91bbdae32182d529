package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Sample;
import frillbook.measure.LengthUnit;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.TableTemplate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the real workbook shows while a cell cannot be used: nothing that needs its part of the
 * work, and everything else as before.
 */
final class RefusalTest {
  /** Column C, behind the flag. */
  private static final int FLAG_SENTENCE = 2;

  /** Column H, behind the level of what fails. */
  private static final int FIRST_FAILING = 7;

  /** Which parts of the work must be usable before a line with that guard is shown. */
  private static final Map<String, Set<String>> NEEDED = new HashMap<>();

  static {
    Set<String> fabric = Set.of("shape", "fabric");
    Set<String> making = Set.of("shape", "fabric", "making");
    Set<String> money = Set.of("shape", "fabric", "making", "money");
    Set<String> choices = Set.of("shape", "fabric", "choices");
    need(Set.of("shape"), "shape_inputs_ok", "shape_ok");
    need(fabric, "fabric_inputs_ok", "strip_ok", "fabric_ok", "cut_ok");
    need(fabric, "crosswise_fits", "lengthwise_fits", "bias_fits");
    need(making, "making_inputs_ok", "making_ok");
    need(money, "cost_ok", "price_ok");
    need(choices, "looks_ok", "two_rows_fit", "three_rows_fit", "two_found", "three_found");
    need(Set.of("shape", "fabric", "making", "money", "choices", "words"), "client_ok");
  }

  /** Where a spiral's joins cannot be known, its guide marks the start in their place. */
  private static final Set<String> MARKS_OF_JOINS = Set.of("guide_join_turn", "guide_join_mark");

  /** Prices that stand in the small table of looks as choices two and three have them. */
  private static final Set<String> PRICES_OF_CHOICES =
      Set.of("flatter_price", "fuller_price", "fuller_more_price");

  /** Which choice such a price is of; 0 where it is reckoned from the first choice alone. */
  private static final Set<String> NUMBERS_OF_CHOICES = Set.of("flatter_choice", "fuller_choice");

  /**
   * The guard of petals: these are always drawn; without it they are 0, with nothing to be seen.
   */
  private static Optional<String> guardOfPetals(String name) {
    boolean side = name.matches("side_([1-3]_out|body)");
    return Optional.of(side ? "making_inputs_ok" : "shape_ok")
        .filter(guard -> side || name.startsWith("petal_"));
  }

  /**
   * Not used by the presets: nothing is hemmed, gathered by hand, zipped, overlapped, ringed or
   * bought besides, and the fibre inside is of medium firmness, no pad and no foam.
   */
  private static final Set<String> UNUSED =
      Set.of(
          "ring_lap",
          "hem_turns",
          "overlock_trim",
          "finish_edge_rate",
          "finish_edge_setup",
          "edge_thread_ratio",
          "fill_soft",
          "fill_firm",
          "pad_extra",
          "pad_step",
          "price_pad",
          "foam_thickness",
          "foam_density",
          "gather_hand_rate",
          "fit_zip_rate",
          "zip_seam",
          "zip_step",
          "price_zip",
          "back_overlap",
          "back_hem",
          "extra_one_step",
          "extra_two_step",
          "extra_three_step",
          "price_extra_one",
          "price_extra_two",
          "price_extra_three");

  /** The guards of every line and column that has one. */
  private static final Map<String, Set<String>> GUARDS = guards();

  private static final Map<LengthUnit, Map<String, List<Object>>> PRESETS =
      new ConcurrentHashMap<>();

  private final List<String> wrong = new ArrayList<>();

  private static void need(Set<String> parts, String... guards) {
    List.of(guards).forEach(guard -> NEEDED.put(guard, parts));
  }

  /** The parts of the work that must be usable for a line with that guard. */
  static Set<String> needed(String guard) {
    return NEEDED.get(guard);
  }

  static List<TrialBrief> unusable() {
    return Stream.of(Trials.INCH, Trials.CM).flatMap(RefusalTest::unusable).toList();
  }

  private static Stream<TrialBrief> unusable(LengthUnit unit) {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, unit);
    return Trials.TEMPLATE.inputs().stream()
        .filter(input -> !UNUSED.contains(input.name()))
        .flatMap(input -> unusable(preset, input));
  }

  private static Stream<TrialBrief> unusable(TrialBrief preset, InputTemplate input) {
    return UnusableValues.of(input, preset.unit())
        .map(value -> preset.with(input.name(), value).titled(input.name() + " is " + value));
  }

  static List<TrialBrief> tried() {
    return Sample.of(unusable(), 14);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tried")
  void theSentenceOfTheInputStandsInAllItsPlacesAndItsPartAloneIsBlank(TrialBrief brief) {
    Map<String, List<Object>> before = presets(brief.unit());
    String name = brief.changes().keySet().iterator().next();
    SheetValues sheet = Trials.given(brief);
    List<InputTemplate> inputs = Trials.TEMPLATE.checkedInputs();
    int row = inputs.stream().map(InputTemplate::name).toList().indexOf(name);
    InputTemplate input = inputs.get(row);
    String limits = brief.unit().say(input.limits(Trials.TEMPLATE.phrases(), brief.unit()));
    String sentence = input.label() + " " + limits + place(sheet, name);
    List<XSSFCell> sentences = sheet.cells("check_sentence").subList(0, inputs.size());
    for (int i = 0; i < inputs.size(); i++) {
      expect(sheet, sentences.get(i), i == row ? sentence : "fine");
    }
    expect(sheet, beside(sheet, name, noteColumn(input, brief.unit())), limits);
    expect(sheet, beside(sheet, "check_flag", FLAG_SENTENCE), sentence);
    expect(sheet, firstFailing(sheet), sentence);
    expect(sheet, sheet.cells("check_flag").get(0), "STOP");
    only(input.use().part(), sheet, before);
    wrong.addAll(Trials.errors(brief.unit()));
    assertEquals(List.of(), wrong, brief.toString());
  }

  @Test
  void emptyCellsEverywhereLeaveNoError() {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    for (InputTemplate input : Trials.TEMPLATE.inputs()) {
      brief = brief.with(input.name(), null);
    }
    SheetValues sheet = Trials.given(brief);
    expect(sheet, sheet.cells("check_flag").get(0), "STOP");
    expect(sheet, sheet.cells("stitched_length").get(0), "");
    wrong.addAll(Trials.errors(Trials.CM));
    assertEquals(List.of(), wrong);
  }

  /**
   * The inputs that leave the stitched length blank when they are emptied, one at a time.
   *
   * @param expected those that are tried in any case
   */
  private static Set<String> emptying(TrialBrief brief, Set<String> expected) {
    List<String> others =
        Trials.TEMPLATE.inputs().stream()
            .map(InputTemplate::name)
            .filter(name -> !expected.contains(name))
            .toList();
    return Stream.concat(expected.stream(), Sample.of(others, 4).stream())
        .filter(name -> Trials.given(brief.with(name, null)).value("stitched_length").equals(""))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Each of these settles where the rows lie, how much strip goes on to them, or their marks. */
  @Test
  void onlyCellsOfTheFlowerLeaveTheStitchedLengthBlank() {
    TrialBrief spiral = TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
    Set<String> flower =
        new TreeSet<>(
            Set.of(
                "diameter",
                "ring_spacing",
                "fullness",
                "row_style",
                "closing_ring",
                "centre_gap",
                "edge_clearance",
                "end_allowance",
                "gather_section"));
    assertEquals(flower, emptying(spiral, flower));
    flower.remove("closing_ring");
    flower.add("ring_lap");
    assertEquals(flower, emptying(spiral.with("row_style", "rings"), flower));
  }

  /** The cell of an input as a person would look it up. */
  private static String place(SheetValues sheet, String name) {
    XSSFCell cell = sheet.cells(name).get(0);
    return " (" + cell.getSheet().getSheetName() + " " + cell.getReference() + ")";
  }

  private static XSSFCell beside(SheetValues sheet, String name, int column) {
    return sheet.cells(name).get(0).getRow().getCell(column);
  }

  /**
   * Column D, but E where D says the amount once more, in another unit, or has words of one's own.
   */
  private static int noteColumn(InputTemplate input, LengthUnit unit) {
    return input.isFree() || input.customary(unit).isPresent() ? 4 : 3;
  }

  /** In the list under the flower, which begins in the row of the fullness. */
  private static XSSFCell firstFailing(SheetValues sheet) {
    return beside(sheet, "fullness", FIRST_FAILING);
  }

  private void expect(SheetValues sheet, XSSFCell cell, Object expected) {
    if (!expected.equals(sheet.value(cell))) {
      Object found = sheet.value(cell);
      wrong.add(SheetValues.where(cell) + " is " + found + ", not " + expected);
    }
  }

  private void expectAmount(SheetValues sheet, XSSFCell cell) {
    if (!(sheet.value(cell) instanceof Double amount && amount > 0)) {
      wrong.add(SheetValues.where(cell) + " is " + sheet.value(cell) + ", not an amount");
    }
  }

  /** What every line and column says as long as all inputs are as preset. */
  private static Map<String, List<Object>> presets(LengthUnit unit) {
    return PRESETS.computeIfAbsent(
        unit,
        of -> {
          SheetValues sheet = Trials.given(TrialBrief.preset(Trials.TEMPLATE, of));
          Map<String, List<Object>> values = new HashMap<>();
          GUARDS.keySet().forEach(name -> values.put(name, sheet.column(name)));
          return values;
        });
  }

  private static Map<String, Set<String>> guards() {
    Map<String, Set<String>> guards = new HashMap<>();
    Trials.TEMPLATE.lines().stream()
        .filter(line -> line.guard().isPresent())
        .forEach(line -> guards.put(line.name(), Set.of(line.guard().get())));
    for (TableTemplate table : Trials.TEMPLATE.tables()) {
      table.columns().forEach(column -> guards.put(column.name(), guards(table, column)));
    }
    return guards;
  }

  private static Set<String> guards(TableTemplate table, ColumnTemplate column) {
    return Stream.of(table.guard(), column.guard())
        .flatMap(Optional::stream)
        .collect(Collectors.toSet());
  }

  private void only(String part, SheetValues sheet, Map<String, List<Object>> before) {
    GUARDS.forEach(
        (name, guards) -> {
          boolean gone =
              guardOfPetals(name).filter(at -> NEEDED.get(at).contains(part)).isPresent();
          boolean blank = guards.stream().anyMatch(guard -> NEEDED.get(guard).contains(part));
          boolean alone = part.equals("choices") && NUMBERS_OF_CHOICES.contains(name);
          boolean none = gone || alone;
          Object nothing = none ? 0.0 : "";
          List<XSSFCell> cells = sheet.cells(name);
          for (int i = 0; i < cells.size() && !MARKS_OF_JOINS.contains(name); i++) {
            if (part.equals("choices") && PRICES_OF_CHOICES.contains(name)) {
              expectAmount(sheet, cells.get(i));
            } else {
              expect(sheet, cells.get(i), none || blank ? nothing : before.get(name).get(i));
            }
          }
        });
  }
}
