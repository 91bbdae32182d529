package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.DamagedTemplates;
import frillbook.Sample;
import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateException;
import frillbook.template.Form;
import frillbook.template.WorkbookTemplate;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** What the reader accepts becomes a workbook, or cells with errors that are told. */
final class DamagedWorkbookTest {
  private static final int SAMPLE = Sample.size(3, 3);

  @Test
  void whatTheReaderAcceptsCanBeMade() {
    long made =
        LongStream.range(0, 100)
            .mapToObj(DamagedTemplates::inOne)
            .map(DamagedWorkbookTest::read)
            .flatMap(Optional::stream)
            .limit(SAMPLE)
            .peek(DamagedWorkbookTest::make)
            .toList()
            .size();
    assertEquals(SAMPLE, made);
  }

  private static Optional<WorkbookTemplate> read(DamagedTemplates templates) {
    try {
      return Optional.of(TemplateReader.read(templates));
    } catch (TemplateException told) {
      return Optional.empty();
    }
  }

  /** Any exception goes on to whoever runs this. */
  private static void make(WorkbookTemplate template) {
    LengthUnit unit = LengthUnit.INCH;
    CalculatedWorkbook workbook =
        CalculatedWorkbook.of(
            template, new WorkbookSetting(unit, Form.of(template).presets(unit), Paper.A4));
    if (workbook.errors().isEmpty()) {
      assertTrue(workbook.file().length > 0);
    }
  }
}
