package frillbook.agreement;

import frillbook.brief.LengthUnit;
import frillbook.brief.Units;
import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The packaged template and a workbook of it for each pair of units, compiled once for all tests.
 */
final class Trials {
  static final WorkbookTemplate TEMPLATE = TemplateReader.read(TemplateSource.packaged());

  static final Units INCH = new Units(LengthUnit.INCH, Currency.getInstance("USD"));
  static final Units CM = new Units(LengthUnit.CM, Currency.getInstance("EUR"));

  /** Currencies with two decimals, none and three. */
  static final List<Units> UNITS =
      List.of(
          INCH,
          CM,
          new Units(LengthUnit.INCH, Currency.getInstance("KWD")),
          new Units(LengthUnit.CM, Currency.getInstance("JPY")));

  private static final Map<Units, TrialWorkbook> WORKBOOKS = new ConcurrentHashMap<>();

  private Trials() {}

  static TrialWorkbook workbook(Units units) {
    return WORKBOOKS.computeIfAbsent(
        units, of -> new TrialWorkbook(TEMPLATE, TrialWorkbook.compiled(TEMPLATE, of)));
  }

  /** Gives the inputs to the workbook of their unit. */
  static SheetValues given(TrialBrief brief) {
    return workbook(brief.units()).given(brief);
  }

  /** Cells of the workbook of those units that show an error. */
  static List<String> errors(Units units) {
    return workbook(units).errors();
  }
}
