package frillbook.workbook;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.DamagedTemplates;
import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.Form;
import frillbook.template.TemplateException;
import frillbook.template.TemplateReader;
import frillbook.template.WorkbookTemplate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the reader accepts becomes a workbook, or cells with errors that are told. */
final class DamagedWorkbookTest {
  private static final int TRIES = 40;

  @Test
  void whatTheReaderAcceptsCanBeMade() {
    int made = 0;
    for (int seed = 0; seed < TRIES; seed++) {
      Optional<WorkbookTemplate> accepted = read(DamagedTemplates.inOne(seed).shortened());
      made += accepted.map(DamagedWorkbookTest::make).orElse(0);
    }
    assertTrue(made >= 3, made + " made");
  }

  private static Optional<WorkbookTemplate> read(DamagedTemplates templates) {
    try {
      return Optional.of(TemplateReader.read(templates));
    } catch (TemplateException told) {
      return Optional.empty();
    }
  }

  /** Any exception goes on to whoever runs this. */
  private static int make(WorkbookTemplate template) {
    LengthUnit unit = LengthUnit.INCH;
    CalculatedWorkbook workbook =
        CalculatedWorkbook.of(
            template, new WorkbookSetting(unit, Form.of(template).presets(unit), Paper.A4));
    List<String> errors = workbook.errors();
    errors.forEach(error -> assertFalse(error.isBlank()));
    return errors.isEmpty() && workbook.file().length > 0 ? 1 : 0;
  }
}
