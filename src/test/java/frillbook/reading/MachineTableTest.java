package frillbook.reading;

import static frillbook.reading.Written.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.template.ColumnTemplate;
import frillbook.template.TableTemplate;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Tables that are read from a step away, with boxes to be ticked. */
class MachineTableTest {
  private static final String ROWS =
      """
        - table: turns
          rows: 3
          guard: none
          row_height: 24
          boxes: {label: Done, most: 6, count: people}
          columns:
            - {column: turn, label: T, unit: "-", format: count, formula: "1", note: N.}
            - {column: wide, label: W, unit: "-", format: count, size: largest, span: 2, formula: "2", note: N.}
        - line: people
          label: L
          unit: "-"
          format: count
          guard: none
          formula: "2"
          note: N.
      """;

  private static String written(String found, String instead) {
    assertTrue(ROWS.contains(found), found);
    return ROWS.replace(found, instead);
  }

  /** One column and one of two, and six boxes. */
  @Test
  void aTableIsAsWideAsItsColumnsAndBoxes() {
    TableTemplate table = Written.read(ROWS).tables().get(0);
    assertEquals(9, table.width());
    assertEquals(OptionalDouble.of(24), table.rowHeight());
    assertEquals(ColumnTemplate.Size.LARGEST, table.column("wide").size());
    assertEquals(ColumnTemplate.Size.USUAL, table.column("turn").size());
  }

  @Test
  void aHeightThatNoRowHasIsTold() {
    told(
        written("row_height: 24", "row_height: 240"),
        "a.yaml:8:17: row_height: 240; expected points from 8 to 100; correct it");
  }

  @Test
  void aSpanThatIsNoNumberOfColumnsIsTold() {
    told(
        written("span: 2", "span: 1.5"),
        "a.yaml:12:81: span: 1.5; expected a whole number from 1 to 20; correct it");
  }

  @Test
  void anUnknownSizeIsTold() {
    told(
        written("size: largest", "size: huge"),
        "a.yaml:12:66: size: huge; expected one of usual, large, largest; choose one of them");
  }

  @Test
  void boxesWithoutAnEndAreTold() {
    told(
        written("most: 6", "most: 0"),
        "a.yaml:9:32: most: 0; expected a whole number from 1 to 20; correct it");
  }

  @Test
  void boxesForWhatIsNoNumberAreTold() {
    told(
        written("count: people", "count: poeple"),
        "a.yaml:9:42: count: poeple; expected the name of an input or a line that is a number;"
            + " correct it (did you mean people?)");
    told(
        written("count: people", "count: turn"),
        "a.yaml:9:42: count: turn; expected the name of an input or a line that is a number;"
            + " choose another");
  }
}
