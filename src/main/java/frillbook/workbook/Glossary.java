package frillbook.workbook;

import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.stream.Stream;

/** Lists every name of a workbook that a person may meet in a formula. */
public final class Glossary {
  /**
   * One name explained.
   *
   * @param unit as in the template
   */
  public record Entry(String label, String name, String unit, String meaning, String sheet) {}

  private Glossary() {}

  /** In reading order. */
  public static List<Entry> of(WorkbookTemplate template) {
    return template.sheets().stream().flatMap(Glossary::entries).toList();
  }

  private static Stream<Entry> entries(SheetTemplate sheet) {
    return sheet.rows().stream().flatMap(row -> entries(row, sheet.name()));
  }

  private static Stream<Entry> entries(RowTemplate row, String sheet) {
    if (row instanceof InputTemplate input) {
      return Stream.of(new Entry(input.label(), input.name(), input.unit(), input.prompt(), sheet));
    } else if (row instanceof LineTemplate line) {
      return Stream.of(new Entry(line.label(), line.name(), line.unit(), line.note(), sheet));
    } else if (row instanceof TableTemplate table) {
      return table.columns().stream()
          .map(each -> new Entry(each.label(), each.name(), each.unit(), each.note(), sheet));
    }
    return Stream.empty();
  }
}
