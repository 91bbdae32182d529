package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.source.Mistake;
import frillbook.source.TemplateException;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Templates written within a test: one sheet, {@code a.yaml}. */
public final class Written {
  /** Lines 1 to 4 of the sheet; its rows begin in line 5. */
  private static final String HEAD =
      """
      sheet: A
      title: T
      widths: [20, 10, 6, 10, 40]
      rows:
      """;

  private Written() {}

  /** A template whose only sheet has {@code rows}, the first of them in line 5. */
  static TemplateSource rows(String rows) {
    return sheet(HEAD + rows);
  }

  static TemplateSource sheet(String text) {
    return files(Map.of("workbook.yaml", "title: T\nsheets: [a.yaml]\n", "a.yaml", text));
  }

  static TemplateSource files(Map<String, String> files) {
    return file -> Optional.ofNullable(files.get(file));
  }

  public static WorkbookTemplate read(String rows) {
    return TemplateReader.read(rows(rows));
  }

  static List<String> mistakes(String rows) {
    return mistakes(rows(rows));
  }

  static List<String> mistakes(TemplateSource source) {
    TemplateException told =
        assertThrows(TemplateException.class, () -> TemplateReader.read(source));
    return told.mistakes().stream().map(Mistake::toString).toList();
  }

  /** That {@code rows} have these mistakes and no others. */
  static void told(String rows, String... messages) {
    assertEquals(List.of(messages), mistakes(rows));
  }

  /** A line with everything it needs; its formula begins in column 14 of its sixth line. */
  static String line(String name, String formula) {
    return line(name, "number", formula);
  }

  static String line(String name, String format, String formula) {
    return """
      - line: %s
        label: L
        unit: in
        format: %s
        guard: none
        formula: %s
        note: N.
    """
        .formatted(name, format, formula);
  }
}
