package frillbook.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.PackagedTemplates;
import frillbook.template.ColumnTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What has to be calculated anew when the wage changes: money, and nothing that is cut or sewn. */
final class WageTest {
  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  /** Everything on the sheet of the pictures' points that is about money. */
  private static final Set<String> MONEY_IN_PICTURES =
      Set.of(
          "money_title",
          "largest_share",
          "largest_part",
          "money_part",
          "money_amount",
          "money_words");

  private static WorkbookValues values;
  private static List<XSSFCell> wage;

  @BeforeAll
  static void followTheWage() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(workbook, TEMPLATE, new WorkbookSetting(LengthUnit.CM, Map.of(), Paper.A4));
    values = new WorkbookValues(workbook);
    wage = values.hangingOn("hourly_rate");
  }

  /** Whether the wage is one that can be used. */
  private static final Set<String> GUARDS_OF_MONEY =
      Set.of("inputs_ok", "plan_ok", "money_inputs_ok", "cost_ok", "price_ok", "client_ok");

  private static Set<String> names(String sheet) {
    return TEMPLATE.sheets().stream()
        .filter(each -> each.name().equals(sheet))
        .flatMap(
            each ->
                Stream.concat(
                    each.rows(LineTemplate.class).stream().map(LineTemplate::name),
                    each.rows(TableTemplate.class).stream()
                        .flatMap(table -> table.columns().stream())
                        .map(ColumnTemplate::name)))
        .collect(Collectors.toSet());
  }

  private static Set<String> reached(String sheet) {
    return names(sheet).stream()
        .filter(name -> values.cells(name).stream().anyMatch(wage::contains))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void itReachesNoSheetOfSewing() {
    Set<String> sheets =
        wage.stream()
            .map(cell -> cell.getSheet().getSheetName())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        new TreeSet<>(
            Set.of(
                "Brief",
                "Checks",
                "Client",
                "For the client",
                "Habits and prices",
                "Money",
                "Picture points",
                "Shopping",
                "Workings")),
        sheets);
  }

  private static Stream<XSSFCell> reachedOfTheBrief() {
    return wage.stream().filter(cell -> cell.getSheet().getSheetName().equals("Brief"));
  }

  /** What is quoted there has no name of its own, but a label in column A. */
  @Test
  void ofTheBriefItReachesPricesAndWhetherAllIsWell() {
    Set<String> labels =
        reachedOfTheBrief()
            .filter(cell -> cell.getColumnIndex() == 1)
            .map(cell -> cell.getRow().getCell(0).getStringCellValue())
            .collect(Collectors.toSet());
    assertEquals(
        Set.of("All checks", "Price of one cushion", "Price of the order", "Cheapest grain"),
        labels);
  }

  /** Beside the name of a grain stand its fabric, strips, joins, hours and, last, its price. */
  @Test
  void ofTheGrainsOnTheBriefItReachesWhatTheyCost() {
    List<String> reached =
        reachedOfTheBrief()
            .map(XSSFCell::getCellFormula)
            .filter(formula -> formula.startsWith("INDEX(grain_"))
            .sorted()
            .toList();
    assertEquals(
        List.of("INDEX(grain_price,1)", "INDEX(grain_price,2)", "INDEX(grain_price,3)"), reached);
  }

  @Test
  void ofThePicturesItReachesThoseOfMoney() {
    assertEquals(new TreeSet<>(MONEY_IN_PICTURES), reached("Picture points"));
  }

  @Test
  void ofMaterialsThreadAndTimeItReachesWhatIsPaid() {
    Set<String> reached = reached("Workings");
    reached.addAll(reached("Money"));
    reached.removeIf(name -> !name.matches("(material|seam|task|hours)_.*"));
    assertEquals(
        new TreeSet<>(
            Set.of("material_price", "material_as_bought", "material_as_used", "material_charged")),
        reached);
  }

  @Test
  void ofTheShoppingItReachesWhatIsPaid() {
    Set<String> columns =
        wage.stream()
            .filter(cell -> cell.getSheet().getSheetName().equals("Shopping"))
            .map(XSSFCell::getCellFormula)
            .map(formula -> formula.replaceAll(".*INDEX\\((\\w+),.*", "$1"))
            .collect(Collectors.toCollection(TreeSet::new));
    // The sentence for a list that is missing asks for the price.
    columns.removeIf(formula -> formula.contains("There is no price yet"));
    assertEquals(new TreeSet<>(Set.of("material_price", "material_as_bought")), columns);
    assertEquals(Set.of(), reached("Shopping"));
  }

  /**
   * Whether a choice is in doubt is a question of its price, too; and on the client's page its
   * words wait for a price as its amounts do.
   */
  @Test
  void ofTheOtherChoicesAndGrainsItReachesWhatTheyCost() {
    Set<String> workings = reached("Workings");
    assertTrue(workings.removeAll(GUARDS_OF_MONEY));
    workings.removeIf(name -> name.startsWith("material_"));
    assertEquals(
        new TreeSet<>(
            Set.of(
                "grain_frill_cost",
                "grain_thread_cost",
                "grain_materials",
                "grain_labour",
                "grain_cost",
                "grain_net_each",
                "grain_price",
                "crosswise_price",
                "lengthwise_price",
                "bias_price",
                "cheapest_grain",
                "cheapest_price",
                "cheapest_saves",
                "cheapest_saves_share",
                "choice_frill_cost",
                "choice_thread_cost",
                "choice_materials",
                "choice_labour",
                "choice_cost",
                "choice_net_each",
                "strip_cost",
                "row_cost",
                "flatter_choice",
                "fuller_choice",
                "fuller_more_price",
                "closer_more_price",
                "price_factor",
                "taxed_together",
                "two_doubt",
                "three_doubt",
                "two_look",
                "three_look",
                "two_asked_each",
                "three_asked_each",
                "two_asked_total",
                "three_asked_total")),
        workings);
    assertEquals(
        new TreeSet<>(
            Set.of(
                "choice_price_each",
                "choice_price_total",
                "look_spacing",
                "flatter_price",
                "same_price",
                "fuller_price")),
        reached("For the client"));
  }

  /** Else nothing would be found to hang on anything. */
  @Test
  void itReachesThePrice() {
    assertTrue(wage.containsAll(values.cells("price_each")));
    assertTrue(values.hangingOn("diameter").size() > values.formulaCells().size() / 2);
  }
}
