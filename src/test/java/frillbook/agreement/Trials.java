package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.reading.PackagedTemplates;
import frillbook.template.WorkbookTemplate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The packaged template and a workbook of it for each unit of length, compiled once for all tests
 * of a thread.
 */
final class Trials {
  static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  static final LengthUnit INCH = LengthUnit.INCH;
  static final LengthUnit CM = LengthUnit.CM;

  /** The presets in currencies with two decimals, three and none. */
  static final List<TrialBrief> PRESETS =
      List.of(
          TrialBrief.preset(TEMPLATE, INCH),
          TrialBrief.preset(TEMPLATE, CM),
          TrialBrief.preset(TEMPLATE, INCH).in("KWD"),
          TrialBrief.preset(TEMPLATE, CM).in("JPY"));

  /** Of every thread, for tests that run at the same time. */
  private static final ThreadLocal<Map<LengthUnit, TrialWorkbook>> WORKBOOKS =
      ThreadLocal.withInitial(() -> new EnumMap<>(LengthUnit.class));

  private Trials() {}

  static TrialWorkbook workbook(LengthUnit unit) {
    return WORKBOOKS
        .get()
        .computeIfAbsent(
            unit, of -> new TrialWorkbook(TEMPLATE, TrialWorkbook.compiled(TEMPLATE, of)));
  }

  /** Gives the inputs to the workbook of their unit. */
  static SheetValues given(TrialBrief brief) {
    return workbook(brief.unit()).given(brief);
  }

  /** Cells of the workbook of that unit that show an error. */
  static List<String> errors(LengthUnit unit) {
    return workbook(unit).errors();
  }
}
