package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import frillbook.source.TemplateSource;
import frillbook.template.ColumnTemplate;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.Range;
import frillbook.template.WorkbookTemplate;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TemplateReaderTest {
  private final WorkbookTemplate template =
      TemplateReader.read(TemplateSource.directory(Path.of("src/test/resources/templates/small")));

  @Test
  void inputsAreGivenInReadingOrder() {
    assertEquals(
        List.of("tape", "flag_width", "sets", "spare", "ratio", "shape"),
        template.inputs().stream().map(InputTemplate::name).toList());
  }

  @Test
  void aLengthHasARangeForEachUnit() {
    InputTemplate tape = template.inputs().get(0);
    assertEquals(new Range(100, 10, 400), tape.range(LengthUnit.INCH));
    assertEquals(new Range(254, 25, 1000), tape.range(LengthUnit.CM));
  }

  @Test
  void eachRepeatsColumnsWithItsVariablesFilledIn() {
    List<ColumnTemplate> columns = template.tables().get(0).columns();
    assertEquals(
        List.of("flag_no", "flag_from", "flag_to", "flag_half", "flag_third"),
        columns.stream().map(ColumnTemplate::name).toList());
    assertEquals("[flag_from]+flag_width/3", columns.get(4).formula().toString());
    assertEquals("Mark at a third", columns.get(4).label());
  }

  @Test
  void aBlockHoldsAllColumnsFromItsFirstToItsLast() {
    assertEquals(
        List.of("flag_from", "flag_to"), template.tables().get(0).blocks().get(0).columns());
  }

  @Test
  void everyEntryKnowsWhereItIsWritten() {
    assertEquals("brief.yaml:8:5", template.inputs().get(0).position().toString());
  }

  @Test
  void linesAreGuardedByThePlanAndChecksByTheInputs() {
    assertEquals("plan_ok", template.lines().get(0).guard().orElseThrow());
    assertEquals("inputs_ok", template.checks().get(0).guard().orElseThrow());
  }

  @Test
  void guardNoneMeansAlways() {
    LineTemplate inputsOk =
        template.lines().stream()
            .filter(line -> line.name().equals("inputs_ok"))
            .findFirst()
            .orElseThrow();
    assertTrue(inputsOk.guard().isEmpty());
  }
}
