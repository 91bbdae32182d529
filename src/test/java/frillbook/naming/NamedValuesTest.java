package frillbook.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NamedValuesTest {
  private record Hem(double hemDepth, int turnCount) {}

  private record Seam(int seamNo, double seamLength) {}

  private record Fabric(String fabricName, boolean isWashed, Hem hem) {}

  private record Sewn(Optional<Hem> hem, List<Seam> seams) {}

  private record Sides(@Prefixed("left") Hem left, @Prefixed("right") Optional<Hem> right) {}

  private record Nested(@Prefixed("whole") Sides sides, @Prefixed("edge") List<Seam> seams) {}

  private record Twice(Hem one, Hem other) {}

  private record LineAndColumn(double seamLength, List<Seam> seams) {}

  private record ColumnAndLine(List<Seam> seams, double seamLength) {}

  private record TwoTables(List<Seam> seams, List<Seam> others) {}

  @Test
  void aCapitalBecomesAnUnderscore() {
    assertEquals("ring_spacing", NamedComponent.nameOf("ringSpacing"));
    assertEquals("diameter", NamedComponent.nameOf("diameter"));
  }

  @Test
  void recordsInsideRecordsAreLaidFlat() {
    var values = NamedValues.of(new Fabric("voile", true, new Hem(0.5, 2)));
    assertEquals(
        Map.of("fabric_name", "voile", "is_washed", 1.0, "hem_depth", 0.5, "turn_count", 2.0),
        values.lines());
    assertEquals(Map.of(), values.columns());
  }

  @Test
  void aListOfRecordsIsATableOfColumns() {
    var values =
        NamedValues.of(new Sewn(Optional.empty(), List.of(new Seam(1, 7), new Seam(2, 9))));
    assertEquals(
        Map.of("seam_no", List.of(1.0, 2.0), "seam_length", List.of(7.0, 9.0)), values.columns());
  }

  @Test
  void whatIsThereIsLaidFlatLikeAnyRecord() {
    var values = NamedValues.of(new Sewn(Optional.of(new Hem(.5, 2)), List.of()));
    assertEquals(Map.of("hem_depth", .5, "turn_count", 2.0), values.lines());
  }

  @Test
  void whatIsMissingKeepsItsNames() {
    var values = NamedValues.of(new Sewn(Optional.empty(), List.of()));
    assertEquals(Map.of("hem_depth", "", "turn_count", ""), values.lines());
    assertEquals(Map.of("seam_no", List.of(), "seam_length", List.of()), values.columns());
  }

  @Test
  void prefixesStandBeforeEveryNameInside() {
    var sides = new Sides(new Hem(1, 2), Optional.empty());
    var values = NamedValues.of(new Nested(sides, List.of()));
    assertEquals(
        Map.of(
            "whole_left_hem_depth",
            1.0,
            "whole_left_turn_count",
            2.0,
            "whole_right_hem_depth",
            "",
            "whole_right_turn_count",
            ""),
        values.lines());
    assertEquals(Set.of("edge_seam_no", "edge_seam_length"), values.columns().keySet());
  }

  private enum Edge implements Coded {
    NARROW_HEM
  }

  private record Edged(Edge edge) {}

  @Test
  void aChoiceStandsThereByItsCode() {
    assertEquals(Map.of("edge", "narrow_hem"), NamedValues.of(new Edged(Edge.NARROW_HEM)).lines());
  }

  private record Spot(double x, double y) {}

  private record Pricked(
      int rowNo, @Prefixed("hole") @Indexed(2) List<Spot> holes, @Prefixed("end") Spot end) {}

  private record Pattern(@Prefixed("row") List<Pricked> rows) {}

  @Test
  void recordsWithinARowAreColumns() {
    Pricked first = new Pricked(1, List.of(new Spot(2, 3), new Spot(4, 5)), new Spot(6, 7));
    Pricked second = new Pricked(2, List.of(new Spot(8, 9), new Spot(10, 11)), new Spot(12, 13));
    assertEquals(
        Map.of(
            "row_row_no", List.of(1.0, 2.0),
            "row_hole_1_x", List.of(2.0, 8.0),
            "row_hole_1_y", List.of(3.0, 9.0),
            "row_hole_2_x", List.of(4.0, 10.0),
            "row_hole_2_y", List.of(5.0, 11.0),
            "row_end_x", List.of(6.0, 12.0),
            "row_end_y", List.of(7.0, 13.0)),
        NamedValues.of(new Pattern(List.of(first, second))).columns());
  }

  @Test
  void namesComeInTheOrderOfTheRecord() {
    var values = NamedValues.of(new Fabric("voile", false, new Hem(0.5, 2)));
    assertEquals(
        List.of("fabric_name", "is_washed", "hem_depth", "turn_count"),
        List.copyOf(values.lines().keySet()));
  }

  @Test
  void aNameClaimedTwiceIsRefused() {
    var hem = new Hem(1, 1);
    var seams = List.of(new Seam(1, 1));
    assertRefused("hem_depth", new Twice(hem, hem));
    assertRefused("seam_length", new LineAndColumn(1, seams));
    assertRefused("seam_length", new ColumnAndLine(seams, 1));
    assertRefused("seam_no", new TwoTables(seams, seams));
  }

  private static void assertRefused(String name, Record plan) {
    var refusal = assertThrows(IllegalStateException.class, () -> NamedValues.of(plan));
    assertEquals("two record components are named " + name, refusal.getMessage());
  }
}
