package frillbook.client;

import frillbook.brief.Brief;
import frillbook.calculation.WorkbookValues;
import frillbook.chart.ChartColour;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.press.Colour;
import frillbook.press.Paper;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.Phrases;
import frillbook.workbook.FormulaTranslation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.EmptyFileException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A plan that a person may have changed and a spreadsheet program saved: its unit, its paper, its
 * colour, and its inputs as they now stand.
 *
 * @param paper of its first sheet; A4 where it is neither of the two
 * @param colour of the fabric in its pictures; ours where it has none
 * @param inputs every input of the template, a Double or a String, of a choice its code; of one
 *     that is not used and cannot be, the default, or nothing where it may be left out
 */
public record PlanFile(LengthUnit unit, Paper paper, Colour colour, Map<String, Object> inputs) {
  private static final String INPUT_FAULT = "input_fault";

  /** What a page is read for; it is worked out anew from the inputs. */
  private static final List<String> PRICES =
      List.of("net_each", "price_each", "net_total", "price_total", "deposit");

  private static final String REMEDY = "Name a workbook that frillbook made.";

  /**
   * Reads the inputs of {@code form} from {@code path}.
   *
   * @throws PlanFileException with one sentence for each cell that cannot be used
   */
  public static PlanFile read(Path path, Form form) {
    try (InputStream in = Files.newInputStream(path);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      return read(path, workbook, form);
    } catch (NoSuchFileException e) {
      throw new PlanFileException(path + " was not found. " + REMEDY);
    } catch (IOException e) {
      throw new PlanFileException(path + " cannot be read. " + REMEDY);
    } catch (EmptyFileException | UnsupportedFileFormatException | POIXMLException e) {
      throw new PlanFileException(path + " is not an .xlsx workbook. Save the plan as .xlsx.");
    }
  }

  private static PlanFile read(Path path, XSSFWorkbook workbook, Form form) {
    WorkbookValues values = new WorkbookValues(workbook);
    if (!values.names().containsAll(List.of("length_unit", "currency_code"))) {
      throw new PlanFileException(
          path
              + " is not a frillbook plan: it has no cells named length_unit and currency_code. "
              + REMEDY);
    }
    LengthUnit unit = unit(path, values);
    List<String> mistakes = new ArrayList<>();
    Map<String, Object> inputs = new LinkedHashMap<>();
    Map<InputTemplate, String> refused = new LinkedHashMap<>();
    for (InputTemplate input : form.inputs()) {
      inputs.put(input.name(), value(values, input, unit, form.phrases(), mistakes, refused));
    }
    Set<InputTemplate> unused = unused(values, form, refused.keySet());
    unused.forEach(input -> inputs.put(input.name(), standIn(input, unit)));
    refused.keySet().removeAll(unused);
    mistakes.addAll(refused.values());
    PRICES.stream()
        .filter(name -> isTypedOver(values, name))
        .forEach(name -> mistakes.add(typedOver(values, name)));
    if (!mistakes.isEmpty()) {
      mistakes.add(0, path + " has inputs that cannot be used.");
      throw new PlanFileException(String.join(System.lineSeparator(), mistakes));
    }
    Colour colour = ChartColour.of(workbook).orElse(Colour.OURS);
    return new PlanFile(unit, paper(workbook), colour, inputs);
  }

  private static boolean isTypedOver(WorkbookValues values, String price) {
    return values.names().contains(price) && !values.hasFormula(price);
  }

  private static String typedOver(WorkbookValues values, String price) {
    return values.where(price)
        + ": found "
        + SavedInput.shown(values.value(price))
        + " over its formula. Put the formula back and type your price into own_price.";
  }

  private static LengthUnit unit(Path path, WorkbookValues values) {
    return unit(values)
        .or(() -> calculatedUnit(values))
        .orElseThrow(
            () ->
                new PlanFileException(
                    path
                        + ": found "
                        + SavedInput.shown(values.value("length_unit"))
                        + " at "
                        + values.where("length_unit")
                        + ". It must be in or cm. Make a new plan."));
  }

  /** Some programs save formulas without their values. */
  private static Optional<LengthUnit> calculatedUnit(WorkbookValues values) {
    values.forgetStored();
    return unit(values);
  }

  private static Optional<LengthUnit> unit(WorkbookValues values) {
    String symbol = values.value("length_unit").toString();
    return Arrays.stream(LengthUnit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst();
  }

  private static Object value(
      WorkbookValues values,
      InputTemplate input,
      LengthUnit unit,
      Phrases phrases,
      List<String> mistakes,
      Map<InputTemplate, String> refused) {
    if (!values.names().contains(input.name())) {
      mistakes.add(
          "There is no cell named "
              + input.name()
              + ". Make a new plan with this version of frillbook.");
      return "";
    }
    SavedInput saved = SavedInput.of(values, input.name());
    Object found = known(input, saved.value());
    saved
        .problem()
        .or(() -> refusal(input, found, unit, phrases))
        .ifPresent(problem -> refused.put(input, values.where(input.name()) + ": " + problem));
    return found;
  }

  /** Of the inputs that cannot be used those that the plan's own checks do not look at. */
  private static Set<InputTemplate> unused(
      WorkbookValues values, Form form, Set<InputTemplate> refused) {
    List<InputTemplate> checked = form.checkedInputs();
    return refused.stream()
        .filter(input -> input.use().when().isPresent())
        .filter(input -> isSound(values, checked.indexOf(input)))
        .collect(Collectors.toSet());
  }

  private static boolean isSound(WorkbookValues values, int row) {
    return values.names().contains(INPUT_FAULT)
        && values.calculated(INPUT_FAULT, row).filter(Double.valueOf(0)::equals).isPresent();
  }

  private static Object standIn(InputTemplate input, LengthUnit unit) {
    boolean mayBeLeftOut = Brief.optionalInputs().contains(input.name());
    return mayBeLeftOut ? NamedValues.NOTHING : input.preset(unit);
  }

  private static Optional<String> refusal(
      InputTemplate input, Object found, LengthUnit unit, Phrases phrases) {
    return input.accepts(found, unit)
        ? Optional.empty()
        : Optional.of(
            "found "
                + SavedInput.shown(found instanceof Double n ? input.said(unit, n) : found)
                + ". "
                + unit.say(input.refusal(phrases, unit)));
  }

  private static Paper paper(XSSFWorkbook workbook) {
    short code = workbook.getSheetAt(0).getPrintSetup().getPaperSize();
    return Arrays.stream(Paper.values()).filter(p -> p.code() == code).findFirst().orElse(Paper.A4);
  }

  /** A number typed where words are asked for is words; the word of a choice is its code. */
  private static Object known(InputTemplate input, Object found) {
    boolean numberForWords = input.isWords() && found instanceof Double;
    Object value = numberForWords ? FormulaTranslation.number((Double) found) : found;
    return input.codeOf(value.toString()).<Object>map(code -> code).orElse(value);
  }
}
