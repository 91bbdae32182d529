package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.workbook.SheetPlaces;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A cell that nothing is made of may hold anything. */
final class UnusedCellsTest {
  /**
   * A brief that has no use for an input, and one that has.
   *
   * @param input its name
   */
  record Use(String input, TrialBrief without, TrialBrief with) {
    @Override
    public String toString() {
      return input;
    }
  }

  private static TrialBrief preset() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.INCH);
  }

  private static List<Use> uses;

  /** Those written here, and for every other input what is found by trying, once. */
  static synchronized List<Use> uses() {
    if (uses == null) {
      uses = List.copyOf(all());
    }
    return uses;
  }

  private static List<Use> all() {
    List<Use> uses = written();
    List<String> names = uses.stream().map(Use::input).toList();
    Trials.TEMPLATE.inputs().stream()
        .filter(input -> input.use().when().isPresent() && !names.contains(input.name()))
        .forEach(input -> uses.add(found(input)));
    return uses;
  }

  private static Use found(InputTemplate input) {
    return new Use(input.name(), UseSearch.find(input, false), UseSearch.find(input, true));
  }

  private static List<Use> written() {
    TrialBrief preset = preset();
    TrialBrief hemmed = preset.with("edge_finish", "narrow_hem");
    TrialBrief zipped = preset.with("back_style", "zipped_halves");
    TrialBrief overlapping = preset.with("back_style", "overlapping");
    TrialBrief bare = preset.with("interfaced", "none");
    List<Use> uses = new ArrayList<>();
    uses.add(new Use("ring_lap", preset, preset.with("row_style", "rings")));
    uses.add(new Use("overlock_trim", hemmed, preset.with("edge_finish", "rolled")));
    uses.add(new Use("overlock_trim", preset, preset.with("edge_finish", "overlocked")));
    uses.add(new Use("finish_edge_rate", preset, hemmed));
    TrialBrief folded = preset.with("edge_finish", "folded").with("cheaper_share", 1.0);
    uses.add(new Use("finish_edge_setup", folded, hemmed));
    uses.add(new Use("join_second_allowance", preset.with("join_finish", "plain"), preset));
    uses.add(new Use("zip_seam", overlapping, zipped));
    uses.add(new Use("zip_step", overlapping, zipped));
    uses.add(new Use("back_overlap", preset, overlapping));
    uses.add(new Use("back_hem", zipped, overlapping));
    uses.add(new Use("interfacing_width", bare, preset));
    for (String extra : List.of("extra_one", "extra_two", "extra_three")) {
      TrialBrief needed = preset.with(extra + "_needed", 2.0);
      uses.add(new Use("price_" + extra, preset, needed));
    }
    for (String choice : List.of("choice_two", "choice_three")) {
      TrialBrief out = preset.with(choice + "_more", null);
      uses.add(new Use(choice + "_spacing", out, preset));
      uses.add(new Use(choice + "_words", out, preset));
    }
    return uses;
  }

  private static InputTemplate template(Use use) {
    return Trials.TEMPLATE.inputs().stream()
        .filter(input -> input.name().equals(use.input()))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Object> values(Use use) {
    return UnusableValues.of(template(use), use.without().unit());
  }

  /** Briefs in each of which one unused cell cannot be used. */
  static List<TrialBrief> left() {
    return uses().stream()
        .flatMap(use -> values(use).map(value -> use.without().with(use.input(), value)))
        .toList();
  }

  /** What the table of tasks and that of materials say of a rate, step or price not in use. */
  private static final Set<String> SAID_ONLY =
      Set.of("task_rate", "task_setup", "material_step", "material_price");

  private static Stream<XSSFCell> saidOnly(SheetValues sheet) {
    return SAID_ONLY.stream().flatMap(name -> sheet.cells(name).stream());
  }

  /** What puts the cell's own number in another unit, beside it, and in the words that are said. */
  private static Stream<XSSFCell> ofItself(SheetValues sheet, String input) {
    XSSFCell own = sheet.cells(input).get(0);
    Stream<XSSFCell> beside = Stream.of(inRowOf(sheet, own, SheetPlaces.OTHER_UNIT));
    Stream<XSSFCell> said =
        sheet.cells("said_" + input).stream()
            .flatMap(words -> Stream.of(inRowOf(sheet, words, SheetPlaces.VALUE), words));
    return Stream.concat(beside, said);
  }

  private static XSSFCell inRowOf(SheetValues sheet, XSSFCell cell, int column) {
    return sheet.cell(cell.getSheet().getSheetName(), cell.getRowIndex(), column);
  }

  /** By hand: a hem has turns and a raw edge, the preset, has none. */
  @Test
  void aUseThatIsNotWrittenIsFound() {
    Use hem =
        uses().stream().filter(use -> use.input().equals("hem_turns")).findFirst().orElseThrow();
    assertEquals(Map.of(), hem.without().changes());
    assertEquals(Map.of("edge_finish", "narrow_hem"), hem.with().changes());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("uses")
  void whereItIsNotUsedItChangesNothing(Use use) {
    SheetValues sheet = Trials.given(use.without());
    assertEquals("READY", sheet.value("check_flag"), use.without().toString());
    Set<XSSFCell> itsOwn =
        Stream.concat(saidOnly(sheet), ofItself(sheet, use.input())).collect(Collectors.toSet());
    Map<XSSFCell, Object> before = new LinkedHashMap<>();
    Trials.workbook(Trials.INCH).formulaCells().stream()
        .filter(cell -> !itsOwn.contains(cell))
        .forEach(cell -> before.put(cell, sheet.value(cell)));
    values(use)
        .forEach(
            value -> {
              TrialBrief left = use.without().with(use.input(), value);
              SheetValues after = Trials.given(left);
              List<String> changed = new ArrayList<>();
              before.forEach(
                  (cell, shown) -> {
                    if (!shown.equals(after.value(cell))) {
                      changed.add(SheetValues.where(cell) + " shows " + after.value(cell));
                    }
                  });
              assertEquals(List.of(), changed, left.toString());
              assertEquals(List.of(), Trials.errors(Trials.INCH), left.toString());
            });
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("uses")
  void whereItIsUsedItIsRefused(Use use) {
    InputTemplate input = template(use);
    Object value = input.kind() == InputKind.TEXT ? "x".repeat(201) : "about 1";
    TrialBrief refused = use.with().with(use.input(), value);
    SheetValues sheet = Trials.given(refused);
    int row = Trials.TEMPLATE.checkedInputs().indexOf(input);
    assertEquals(1.0, sheet.column("input_fault").get(row), refused.toString());
    assertEquals("STOP", sheet.value("check_flag"), refused.toString());
    assertEquals(List.of(), Trials.errors(Trials.INCH), refused.toString());
  }

  /** A choice without its difference is not offered: its line is blank, the others stay. */
  @Test
  void aChoiceWithoutItsCellIsLeftOut() {
    TrialBrief two = preset().with("choice_two_more", null);
    SheetValues sheet = Trials.given(two);
    assertEquals(List.of("fits", "left out", "fits"), sheet.column("choice_fits"));
    assertEquals("left out", sheet.value("two_look"));
    assertEquals("Fuller petals", sheet.value("three_look"));
    assertEquals("", sheet.value("two_asked_each"));
  }
}
