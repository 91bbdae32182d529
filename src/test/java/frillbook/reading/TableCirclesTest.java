package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.template.WorkbookTemplate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When columns of a table may need each other. */
final class TableCirclesTest {
  private static String table(String first, String second) {
    return """
      - table: steps
        rows: 5
        guard: none
        columns:
          - {column: left_sum, label: L, unit: in, format: number, note: N., formula: "%s"}
          - {column: right_sum, label: L, unit: in, format: number, note: N., formula: "%s"}
    """
        .formatted(first, second);
  }

  @Test
  void aRingThroughTheRowAboveIsNoCircle() {
    WorkbookTemplate template = Written.read(table("[right_sum^]+1", "[left_sum]*2"));
    assertEquals(1, template.tables().size());
  }

  @Test
  void aColumnMayNeedItselfOneRowAbove() {
    assertEquals(1, Written.read(table("[left_sum^]+1", "1")).tables().size());
  }

  @Test
  void aRingWithinOneRowIsACircle() {
    assertEquals(
        List.of(
            "a.yaml:9:84: a circle: left_sum needs right_sum needs left_sum;"
                + " expected values that do not need themselves; break the circle"),
        Written.mistakes(table("[right_sum]+1", "[left_sum]*2")));
  }

  @Test
  void aRingThroughAWholeColumnIsACircleThoughItAlsoGoesOneRowUp() {
    assertEquals(
        List.of(
            "a.yaml:9:84: a circle: left_sum needs right_sum needs left_sum;"
                + " expected values that do not need themselves; break the circle"),
        Written.mistakes(table("[right_sum^]+1", "SUM(left_sum)")));
  }

  @Test
  void aColumnOfAnotherTableIsToldAsUnknown() {
    assertEquals(
        List.of(
            "a.yaml:9:84: [right_sun], which is not a column of table steps;"
                + " expected a column of the same table; correct it (did you mean right_sum?)"),
        Written.mistakes(table("[right_sun]", "1")));
  }

  @Test
  void bracketsOutsideATableAreTold() {
    assertEquals(
        List.of(
            "a.yaml:5:84: [left_sum] outside a table; expected [column] only in a table's"
                + " formulas; use a name without brackets"),
        Written.mistakes(
            "  - {line: ring_half, label: L, unit: in, format: number, guard: none, formula:"
                + " \"1+[left_sum]\", note: N.}\n"));
  }
}
