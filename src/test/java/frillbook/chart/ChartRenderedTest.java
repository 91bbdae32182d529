package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.calculation.WorkbookValues;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** Charts as LibreOffice prints them; sizes are worked out by hand beside the assertions. */
final class ChartRenderedTest {
  @TempDir Path folder;

  @BeforeAll
  static void programs() {
    Rendered.assumePrograms();
  }

  private List<BufferedImage> pages(byte[] file) throws IOException {
    return Rendered.pages(Rendered.chartsAlone(file), folder);
  }

  private static void isRound(Ink figure) {
    double ratio = (double) figure.width() / figure.height();
    assertTrue(figure.width() > 100, figure.toString());
    assertEquals(1, ratio, 0.03, figure.toString());
  }

  @Test
  void everyChartIsDrawnAndACircleIsRound() throws IOException {
    List<BufferedImage> pages = pages(Coin.file());
    assertEquals(6, pages.size());
    pages.forEach(page -> assertTrue(Ink.largest(page).pixels() > 500));
    isRound(Ink.largest(pages.get(3)));
    isRound(Ink.largest(pages.get(4)));
  }

  @Test
  void theClientsChartsAreDrawnFromItsOwnSheet() throws IOException {
    List<BufferedImage> pages = pages(Coin.clientPage());
    assertEquals(2, pages.size());
    isRound(Ink.largest(pages.get(0)));
  }

  @Test
  void aChartFollowsItsCells() throws IOException {
    // Half the radius, half the width.
    byte[] bytes = Coin.file();
    Ink whole = circle(bytes, folder.resolve("whole"));
    Ink changed = circle(withRadius(0.4, bytes), folder.resolve("changed"));
    assertEquals(0.5, (double) changed.width() / whole.width(), 0.02);
  }

  private static Ink circle(byte[] bytes, Path folder) throws IOException {
    Files.createDirectories(folder);
    return Ink.largest(Rendered.pages(Rendered.chartsAlone(bytes), folder).get(4));
  }

  /** Without the values of formulas, which LibreOffice would trust. */
  private static byte[] withRadius(double radius, byte[] bytes) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes));
        ByteArrayOutputStream written = new ByteArrayOutputStream()) {
      WorkbookValues values = new WorkbookValues(workbook);
      values.set("radius", radius);
      values.formulaCells().stream()
          .map(XSSFCell::getCTCell)
          .filter(CTCell::isSetV)
          .forEach(CTCell::unsetV);
      workbook.write(written);
      return written.toByteArray();
    }
  }
}
