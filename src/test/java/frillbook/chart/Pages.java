package frillbook.chart;

import frillbook.client.ClientPage;
import frillbook.measure.LengthUnit;
import frillbook.press.PackagedPress;
import frillbook.pressing.WorkbookPackage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Pages for the client. */
final class Pages {
  private Pages() {}

  /** That of a plan's file. */
  static byte[] of(byte[] plan, String sheet) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(plan))) {
      return WorkbookPackage.asItIs(
          ClientPage.of(workbook, sheet, PackagedPress.of(LengthUnit.CM).form().phrases()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
