package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.InputTemplate;
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
import org.apache.poi.EmptyFileException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A plan that a person may have changed and a spreadsheet program saved: its unit, its paper, and
 * its inputs as they now stand.
 *
 * @param paper of its first sheet; A4 where it is neither of the two
 * @param inputs every input of the templates, a Double or a String
 */
public record PlanFile(LengthUnit unit, Paper paper, Map<String, Object> inputs) {
  private static final String REMEDY = "Name a workbook that frillbook made.";

  /**
   * Reads the inputs of {@code templates} from {@code path}.
   *
   * @throws PlanFileException with one sentence for each cell that cannot be used
   */
  public static PlanFile read(Path path, List<InputTemplate> templates) {
    try (InputStream in = Files.newInputStream(path);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      return read(path, workbook, templates);
    } catch (NoSuchFileException e) {
      throw new PlanFileException(path + " is not there. " + REMEDY);
    } catch (IOException e) {
      throw new PlanFileException(path + " cannot be read. " + REMEDY);
    } catch (EmptyFileException | UnsupportedFileFormatException | POIXMLException e) {
      throw new PlanFileException(path + " is no .xlsx workbook. Save the plan as .xlsx.");
    }
  }

  private static PlanFile read(Path path, XSSFWorkbook workbook, List<InputTemplate> templates) {
    WorkbookValues values = new WorkbookValues(workbook);
    if (!values.names().containsAll(List.of("length_unit", "currency_code"))) {
      throw new PlanFileException(
          path
              + " is no plan of frillbook: it has no cells named length_unit and currency_code. "
              + REMEDY);
    }
    LengthUnit unit = unit(path, values);
    List<String> mistakes = new ArrayList<>();
    Map<String, Object> inputs = new LinkedHashMap<>();
    for (InputTemplate input : templates) {
      inputs.put(input.name(), value(values, input, unit, mistakes));
    }
    if (!mistakes.isEmpty()) {
      mistakes.add(0, path + " has inputs that cannot be used.");
      throw new PlanFileException(String.join(System.lineSeparator(), mistakes));
    }
    return new PlanFile(unit, paper(workbook), inputs);
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
                        + ". It must be in or cm. Make the plan anew."));
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
      WorkbookValues values, InputTemplate input, LengthUnit unit, List<String> mistakes) {
    if (!values.names().contains(input.name())) {
      mistakes.add(
          "There is no cell named "
              + input.name()
              + ". Make the plan anew with this version of frillbook.");
      return "";
    }
    SavedInput saved = SavedInput.of(values, input.name());
    Object found = asText(input, saved.value());
    saved
        .problem()
        .or(() -> refusal(input, found, unit))
        .ifPresent(problem -> mistakes.add(values.where(input.name()) + ": " + problem));
    return found;
  }

  private static Optional<String> refusal(InputTemplate input, Object found, LengthUnit unit) {
    return input.accepts(found, unit)
        ? Optional.empty()
        : Optional.of("found " + SavedInput.shown(found) + ". " + unit.say(input.refusal(unit)));
  }

  private static Paper paper(XSSFWorkbook workbook) {
    short code = workbook.getSheetAt(0).getPrintSetup().getPaperSize();
    return Arrays.stream(Paper.values()).filter(p -> p.code() == code).findFirst().orElse(Paper.A4);
  }

  /** A number typed where words are asked for is words. */
  private static Object asText(InputTemplate input, Object found) {
    boolean numberForWords = input.isWords() && found instanceof Double;
    return numberForWords ? FormulaTranslation.number((Double) found) : found;
  }
}
