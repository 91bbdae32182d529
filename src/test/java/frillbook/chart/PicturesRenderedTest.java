package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.pressing.CalculatedWorkbook;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of the workbook as LibreOffice prints them, for cushions of very different kind. */
final class PicturesRenderedTest {
  private static final WorkbookTemplate TEMPLATE =
      TemplateReader.read(TemplateSource.directory(Path.of("workbook-templates")));

  /** Fewer pixels are a dot or the remains of a frame, no picture. */
  private static final int LEAST_INK = 300;

  @TempDir Path folder;

  @BeforeAll
  static void programs() {
    Rendered.assumePrograms();
  }

  /** As preset, tiny, huge, tight and sparse; every grain among them. */
  static Stream<Map<String, Object>> cushions() {
    return Stream.of(
        Map.of(),
        Map.of("diameter", 15.0, "ring_spacing", 1.5, "frill_height", 2.0, "grain", "bias"),
        Map.of(
            "diameter",
            140.0,
            "ring_spacing",
            5.0,
            "fabric_width",
            180.0,
            "base_fabric_width",
            180.0,
            "interfaced",
            "none",
            "grain",
            "lengthwise",
            "quantity",
            2.0),
        Map.of("ring_spacing", 1.0, "fullness", 4.0, "quantity", 6.0, "grain", "crosswise"),
        Map.of(
            "ring_spacing",
            8.0,
            "fullness",
            1.2,
            "row_style",
            "rings",
            "grain",
            "bias",
            "join_line",
            "square",
            "matching_discs",
            3.0));
  }

  private static byte[] file(Map<String, Object> inputs) {
    WorkbookSetting setting = new WorkbookSetting(LengthUnit.CM, inputs, Paper.A4);
    return CalculatedWorkbook.of(TEMPLATE, setting).file();
  }

  private List<BufferedImage> pages(byte[] file) throws IOException {
    return Rendered.pages(Rendered.chartsAlone(file), folder);
  }

  /**
   * A disc covers 79 % of the square about it, and petals leave gaps at its rim; a line is less.
   */
  private static void isFilledAndRound(Ink flower) {
    assertEquals(1, (double) flower.width() / flower.height(), 0.03, flower.toString());
    double share = (double) flower.pixels() / (flower.width() * flower.height());
    assertTrue(share > 0.5 && share < 0.79, flower + " covers " + share);
  }

  @ParameterizedTest
  @MethodSource("cushions")
  void everyPictureIsDrawnAndTheFlowerIsFilledAndRound(Map<String, Object> inputs)
      throws IOException {
    List<BufferedImage> pages = pages(file(inputs));
    // From above, guide, fabric, base fabric, side, money, fuller, closer, and from above for the
    // client.
    assertEquals(9, pages.size());
    for (BufferedImage page : pages) {
      assertTrue(Ink.largest(page).pixels() > LEAST_INK, "picture " + pages.indexOf(page));
    }
    isFilledAndRound(Ink.largest(pages.get(0)));
    isFilledAndRound(Ink.largest(pages.get(8)));
  }

  @Test
  void theClientsPageHasTheFlower() throws IOException {
    List<BufferedImage> pages = pages(Pages.of(file(Map.of()), "Client"));
    assertEquals(1, pages.size());
    assertTrue(Ink.largest(pages.get(0)).pixels() > LEAST_INK);
    isFilledAndRound(Ink.largest(pages.get(0)));
  }
}
