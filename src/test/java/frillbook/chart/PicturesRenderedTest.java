package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.Sample;
import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.press.CellValues;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of the workbook as LibreOffice prints them, for cushions of very different kind. */
final class PicturesRenderedTest {
  private static final Press PRESS = PackagedPress.of(LengthUnit.CM);

  /** Fewer pixels are a dot or the remains of a frame, no picture. */
  private static final int LEAST_INK = 300;

  @TempDir private static Path folder;

  /** As preset, tiny, huge, tight and sparse; every grain among them. */
  static List<Map<String, Object>> cushions() {
    List<Map<String, Object>> all =
        List.of(
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
    return Sample.of(all, 4);
  }

  private static byte[] file() {
    LengthUnit unit = LengthUnit.CM;
    Map<String, Object> presets = PRESS.form().presets(unit);
    NamedValues plan = NamedValues.of(Plan.of(Brief.of(unit, presets)));
    CellValues engine = new CellValues(PRESS.form(), unit, presets, plan);
    return PRESS.fill(PRESS.filling(engine, presets, Paper.A4));
  }

  /**
   * Prints all of them in one go, for the program takes longer to start than to print. Inputs are
   * typed into the file with the presets, as a maker does.
   */
  @BeforeAll
  static void print() throws IOException, InterruptedException {
    Rendered.assumePrograms();
    Office office = new Office();
    office.open(Files.write(folder.resolve("made.xlsx"), Rendered.chartsAlone(file())));
    cushions().forEach(inputs -> print(office, inputs));
    byte[] page = Rendered.chartsAlone(Pages.of(file(), "Client"));
    office.close().open(Files.write(folder.resolve("page.xlsx"), page));
    office.print(client()).close().run();
  }

  private static void print(Office office, Map<String, Object> inputs) {
    Map<String, Object> cells = PRESS.form().presets(LengthUnit.CM);
    cells.putAll(inputs);
    cells.replaceAll(PRESS.form().vocabulary().words()::shown);
    cells.forEach(office::type);
    office.print(pdf(inputs));
  }

  private static Path pdf(Map<String, Object> inputs) {
    return folder.resolve("cushion" + cushions().indexOf(inputs) + ".pdf");
  }

  private static Path client() {
    return folder.resolve("client.pdf");
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
    List<BufferedImage> pages = Rendered.images(pdf(inputs));
    // From above, fabric, base fabric, side, money, from above for the client, and the guide.
    assertEquals(7, pages.size());
    for (BufferedImage page : pages) {
      assertTrue(Ink.largest(page).pixels() > LEAST_INK, "picture " + pages.indexOf(page));
    }
    isFilledAndRound(Ink.largest(pages.get(0)));
    isFilledAndRound(Ink.largest(pages.get(5)));
  }

  @Test
  void theClientsPageHasTheFlower() throws IOException {
    List<BufferedImage> pages = Rendered.images(client());
    assertEquals(1, pages.size());
    assertTrue(Ink.largest(pages.get(0)).pixels() > LEAST_INK);
    isFilledAndRound(Ink.largest(pages.get(0)));
  }
}
