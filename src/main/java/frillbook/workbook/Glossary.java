package frillbook.workbook;

import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lists the names of a workbook that a person may meet in a formula, but for lines of the
 * background, where the name stands beside what it means.
 */
public final class Glossary {
  /**
   * One name explained, or several that mean the same, as the columns of a search that is made for
   * each grain.
   *
   * @param name each apart from the next by a comma
   * @param unit as in the template
   */
  public record Entry(String label, String name, String unit, String meaning, String sheet) {
    private Entry unnamed() {
      return new Entry(label, "", unit, meaning, sheet);
    }

    private static Entry ofAll(List<Entry> same) {
      Entry one = same.get(0);
      String names = same.stream().map(Entry::name).collect(Collectors.joining(", "));
      return new Entry(one.label, names, one.unit, one.meaning, one.sheet);
    }
  }

  private Glossary() {}

  /** In reading order of what is explained first. */
  public static List<Entry> of(WorkbookTemplate template) {
    Map<Entry, List<Entry>> same =
        template.sheets().stream()
            .filter(SheetTemplate::listed)
            .flatMap(Glossary::entries)
            .collect(
                Collectors.groupingBy(Entry::unnamed, LinkedHashMap::new, Collectors.toList()));
    return same.values().stream().map(Entry::ofAll).toList();
  }

  private static Stream<Entry> entries(SheetTemplate sheet) {
    return sheet.rows().stream()
        .filter(row -> sheet.printed() || !(row instanceof LineTemplate))
        .flatMap(row -> entries(row, sheet.name()));
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
