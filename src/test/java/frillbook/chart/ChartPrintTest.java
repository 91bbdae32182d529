package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.WorkbookPackage;
import frillbook.reading.TemplateReader;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Where printed pages begin and end on a sheet with a chart at its foot. */
final class ChartPrintTest {
  private static final String CHART =
      """
        - picture: shape
          label: A shape
          kind: drawing
          title: A
          guard: none
          alt: A shape.
          height: 22
          series:
            - {x: point_x, y: point_y}
      """;

  private static final String POINTS =
      """
      sheet: Points
      title: Points
      widths: [10, 10]
      rows:
        - table: points
          rows: 5
          guard: none
          columns:
            - {column: point_x, label: x, unit: "-", format: number, formula: "{n}/5", note: N.}
            - {column: point_y, label: y, unit: "-", format: number, formula: "{n}/5", note: N.}
      """;

  /** A title, {@code notes} notes of one line, and a chart of 22 rows. */
  private static XSSFWorkbook under(int notes) {
    String sheet =
        "sheet: A\ntitle: T\nwidths: [40, 40]\nrows:\n" + "  - note: N.\n".repeat(notes) + CHART;
    Map<String, String> files =
        Map.of(
            "workbook.yaml",
            "title: T\nsheets: [a.yaml, points.yaml]\n",
            "a.yaml",
            sheet,
            "points.yaml",
            POINTS);
    WorkbookTemplate template = TemplateReader.read(file -> Optional.ofNullable(files.get(file)));
    XSSFWorkbook workbook = new XSSFWorkbook();
    WorkbookSetting setting = new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4);
    new WorkbookCompiler().compileInto(workbook, template, setting);
    return workbook;
  }

  @Test
  void aChartIsWithinWhatIsPrinted() {
    XSSFWorkbook workbook = under(25);
    WorkbookPackage.asItIs(workbook);
    // The sentence stands in row 27, the chart to row 49: no area that ends with row 40.
    assertEquals(null, workbook.getPrintArea(0));
  }

  @Test
  void aChartThatWouldBeCutBeginsANewPageWithItsSentence() {
    // A page has room for about 704 points. The title takes 29, a note 25, the sentence 22 and the
    // chart 352: with 5 notes 528, with 20 notes 903.
    assertArrayEquals(new int[0], under(5).getSheetAt(0).getRowBreaks());
    assertArrayEquals(new int[] {20}, under(20).getSheetAt(0).getRowBreaks());
  }

  /** Rows of 729 points: more than 704, less than the 778 a roomier program may print. */
  @Test
  void aChartThatOnlyARoomierPageWouldCutBeginsANewPageToo() {
    assertArrayEquals(new int[] {28}, under(28).getSheetAt(0).getRowBreaks());
  }
}
