package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.brief.Units;
import frillbook.template.InputTemplate;
import frillbook.template.WorkbookTemplate;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.EmptyFileException;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A plan that a person may have changed and a spreadsheet program saved: its units, and its inputs
 * as they now stand.
 *
 * @param inputs every input of the template, a Double or a String
 */
public record PlanFile(Units units, Map<String, Object> inputs) {

  /**
   * Reads the inputs of {@code template} from {@code path}.
   *
   * @throws PlanFileException with one sentence for each cell that cannot be used
   */
  public static PlanFile read(Path path, WorkbookTemplate template) {
    try (InputStream in = Files.newInputStream(path);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      return read(path, new WorkbookValues(workbook), template);
    } catch (IOException e) {
      throw new PlanFileException(path + " cannot be read. Name a workbook that frillbook made.");
    } catch (EmptyFileException | UnsupportedFileFormatException | POIXMLException e) {
      throw new PlanFileException(path + " is no .xlsx workbook. Save the plan as .xlsx.");
    }
  }

  private static PlanFile read(Path path, WorkbookValues values, WorkbookTemplate template) {
    List<String> mistakes = new ArrayList<>();
    Optional<Units> units = units(values);
    if (units.isEmpty()) {
      throw new PlanFileException(
          path + " is no plan of frillbook: it has no cells named length_unit and currency_code.");
    }
    Map<String, Object> inputs = new LinkedHashMap<>();
    for (InputTemplate input : template.inputs()) {
      inputs.put(input.name(), value(values, input, units.get(), mistakes));
    }
    if (!mistakes.isEmpty()) {
      throw new PlanFileException(path + ":\n" + String.join("\n", mistakes));
    }
    return new PlanFile(units.get(), inputs);
  }

  private static Optional<Units> units(WorkbookValues values) {
    if (!values.names().contains("length_unit") || !values.names().contains("currency_code")) {
      return Optional.empty();
    }
    String symbol = values.value("length_unit").toString();
    String code = values.value("currency_code").toString();
    return Arrays.stream(LengthUnit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .flatMap(unit -> currency(code).map(currency -> new Units(unit, currency)));
  }

  private static Optional<Currency> currency(String code) {
    return Currency.getAvailableCurrencies().stream()
        .filter(currency -> currency.getCurrencyCode().equals(code))
        .findFirst();
  }

  private static Object value(
      WorkbookValues values, InputTemplate input, Units units, List<String> mistakes) {
    if (!values.names().contains(input.name())) {
      mistakes.add(
          "There is no cell named "
              + input.name()
              + ". Make the plan anew with this version of frillbook.");
      return "";
    }
    Object found = asText(input, values.value(input.name()));
    if (!input.accepts(found, units.length())) {
      String shown = found.toString().isEmpty() ? "nothing" : "\"" + found + "\"";
      mistakes.add(
          values.where(input.name())
              + ": found "
              + shown
              + ". "
              + units.say(input.refusal(units.length())));
    }
    return found;
  }

  /** A number typed where words are asked for is words. */
  private static Object asText(InputTemplate input, Object found) {
    boolean numberForWords = input.isWords() && found instanceof Double;
    return numberForWords ? FormulaTranslation.number((Double) found) : found;
  }
}
