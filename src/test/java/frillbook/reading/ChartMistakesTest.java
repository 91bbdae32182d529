package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.template.ChartLine;
import frillbook.template.ChartTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be wrong with a chart, word for word, at the place where it is written. */
final class ChartMistakesTest {
  private static final String TABLE =
      """
        - table: points
          rows: 5
          guard: none
          columns:
            - {column: point_x, label: x, unit: "-", format: number, formula: 1, note: N.}
            - {column: point_y, label: y, unit: "-", format: number, formula: 1, note: N.}
      """;

  /** Its series stand in line 19. */
  private static String chart(String series) {
    return TABLE
        + """
            - picture: shape
              label: A shape
              kind: drawing
              title: A
              guard: none
              alt: A shape.
              height: 10
              series:
                - %s
          """
            .formatted(series);
  }

  private static void told(String rows, String... messages) {
    assertEquals(List.of(messages), Written.mistakes(rows));
  }

  @Test
  void aChartWithoutMistakesIsRead() {
    WorkbookTemplate template = Written.read(chart("{x: point_x, y: point_y, marker: dot}"));
    ChartTemplate chart = template.rows(ChartTemplate.class).get(0);
    assertEquals(10, chart.height());
    assertEquals(ChartLine.MEDIUM, chart.series().get(0).line());
    assertEquals(2, chart.x().length());
  }

  @Test
  void anUnknownColumnIsTold() {
    told(
        chart("{x: point_z, y: point_y}"),
        "a.yaml:19:13: the unknown column point_z; expected the name of a table's column;"
            + " correct it or add the column (did you mean point_x?)");
  }

  @Test
  void aColumnWithBlankRowsIsTold() {
    told(
        chart("{x: point_x, y: point_y}").replace("rows: 5\n", "rows: 5\n    show: 1=1\n"),
        "a.yaml:20:13: the column point_x, which has blank rows; expected a column of a table"
            + " without show, as a blank cell is drawn as 0; repeat the last point instead of"
            + " leaving rows blank",
        "a.yaml:20:25: the column point_y, which has blank rows; expected a column of a table"
            + " without show, as a blank cell is drawn as 0; repeat the last point instead of"
            + " leaving rows blank");
  }

  @Test
  void columnsOfDifferentLengthAreTold() {
    String other = TABLE.replace("rows: 5", "rows: 6").replace("point_", "other_");
    told(
        chart("{x: point_x, y: other_y}") + other,
        "a.yaml:19:25: a series of 5 rows across and 6 upwards; expected two columns of one"
            + " length; take both from one table");
  }

  @Test
  void aSeriesThatCannotBeSeenIsTold() {
    told(
        chart("{x: point_x, y: point_y, line: none}"),
        "a.yaml:19:9: a series with neither line nor marker; expected one of the two;"
            + " write line: thin or marker: dot");
  }

  @Test
  void aChartWithoutSeriesIsTold() {
    told(
        chart("").replace("series:\n      - \n", "series: []\n"),
        "a.yaml:11:5: picture shape with no series; expected at least one;"
            + " write series: [{x: …, y: …}]");
  }

  private static String petals(String series) {
    return chart(series).replace("kind: drawing", "kind: petals");
  }

  @Test
  void petalsWithoutMistakesAreRead() {
    WorkbookTemplate template = Written.read(petals("{y: point_y, fill: 0.5, turn: 2}"));
    ChartTemplate chart = template.rows(ChartTemplate.class).get(0);
    assertEquals(2, chart.series().get(0).turn());
    assertEquals(ChartLine.NONE, chart.series().get(0).line());
  }

  @Test
  void petalsThatCoverMoreThanAllAreTold() {
    told(
        petals("{y: point_y, fill: 17}"),
        "a.yaml:19:28: fill: 17; expected a share from 0 to 1; correct it");
  }

  @Test
  void petalsTurnedPastTheirRowsAreTold() {
    told(
        petals("{y: point_y, fill: 0.5, turn: 5}"),
        "a.yaml:19:9: petals of 5 rows turned by 5; expected fewer; correct turn or add rows");
    told(
        petals("{y: point_y, fill: 0.5, turn: 0.5}"),
        "a.yaml:19:39: turn: 0.5; expected a whole number of rows from 0 to 1000; correct it");
  }

  @Test
  void petalsOfDifferentLengthAreTold() {
    String other = TABLE.replace("rows: 5", "rows: 6").replace("point_", "other_");
    told(
        petals("{y: point_y, fill: 1}\n      - {y: other_y, fill: 1}") + other,
        "a.yaml:20:13: petals of 6 rows beside others of 5; expected columns of one length; take"
            + " all from one table");
  }

  @Test
  void petalsHaveNoXAndNoAxes() {
    told(
        petals("{x: point_x, y: point_y, fill: 1}"),
        "a.yaml:19:10: the unknown key x in series; expected one of y, line, fill, turn; correct or"
            + " remove it (did you mean y?)");
    assertEquals(
        1, Written.mistakes(petals("{y: point_y, fill: 1}") + "    x_axis: {from: 0}\n").size());
  }

  @Test
  void aHeightThatNoPageHoldsIsTold() {
    told(
        chart("{x: point_x, y: point_y}").replace("height: 10", "height: 100"),
        "a.yaml:17:13: height: 100; expected a whole number of rows from 6 to 40; correct it");
  }

  @Test
  void aReversedAxisIsTold() {
    told(
        chart("{x: point_x, y: point_y}") + "    x_axis: {from: 2}\n",
        "a.yaml:20:13: an axis from 2.0 to 1.0; expected from below to; correct from or to");
  }

  @Test
  void theTitleIsASentenceLikeAnyOther() {
    told(
        chart("{x: point_x, y: point_y}").replace("title: A", "title: 'A {nowhere}'"),
        "a.yaml:14:16: the unknown name nowhere; expected the name of an input or a line;"
            + " correct it or add what it names");
  }

  @Test
  void anUnknownWordIsTold() {
    told(
        chart("{x: point_x, y: point_y, line: fat}"),
        "a.yaml:19:40: line: fat; expected one of none, thin, medium, thick, dashed, dotted, tint;"
            + " choose one of them");
  }

  @Test
  void anUnknownKeyIsTold() {
    told(
        chart("{x: point_x, y: point_y, lines: thin}"),
        "a.yaml:19:34: the unknown key lines in series; expected one of x, y, line, marker,"
            + " label; correct or remove it (did you mean line?)");
  }
}
