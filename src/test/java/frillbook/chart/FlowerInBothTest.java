package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.press.CellValues;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import frillbook.wording.PlanWords;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The flower on the client's page, printed by two programs that share no code. */
final class FlowerInBothTest {
  @TempDir Path folder;

  @BeforeAll
  static void programs() {
    Rendered.assumeBothPrograms();
  }

  private static byte[] clientPage() throws IOException {
    Briefs briefs = Briefs.inch().inMillimetres();
    Press press = PackagedPress.of(LengthUnit.CM);
    NamedValues plan = NamedValues.of(Plan.of(briefs.brief()));
    NamedValues said =
        PlanWords.complete(press.form().vocabulary(), LengthUnit.CM, briefs.inputs(), plan);
    CellValues cells = new CellValues(press.form(), LengthUnit.CM, briefs.inputs(), said);
    byte[] file = press.fill(press.filling(cells, briefs.inputs(), Paper.A4));
    return Rendered.chartsAlone(Pages.of(file, "Client"));
  }

  private static double roundness(Ink flower) {
    return (double) flower.width() / flower.height();
  }

  /** Of the square about it. */
  private static double covered(Ink flower) {
    return (double) flower.pixels() / (flower.width() * flower.height());
  }

  /** Of all pixels that are not white, from 0 for white to 1 for black. */
  private static double darkness(BufferedImage page) {
    double dark = 0;
    int coloured = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        int shade = page.getRaster().getSample(x, y, 0);
        coloured += shade < 250 ? 1 : 0;
        dark += shade < 250 ? 1 - shade / 255.0 : 0;
      }
    }
    return dark / coloured;
  }

  /** Loosely: within a tenth of each other, and round within a thirtieth. */
  @Test
  void bothPrintTheSameFlower() throws IOException {
    byte[] page = clientPage();
    List<BufferedImage> office =
        Rendered.pages(page, Files.createDirectory(folder.resolve("office")));
    List<BufferedImage> gnumeric =
        Rendered.gnumericPages(page, Files.createDirectory(folder.resolve("gnumeric")));
    Ink one = Ink.largest(office.get(0));
    Ink other = Ink.largest(gnumeric.get(0));
    assertTrue(one.width() > 200 && other.width() > 200, one + " and " + other);
    assertEquals(1, roundness(one), .033);
    assertEquals(1, roundness(other), .033);
    assertEquals(1, covered(one) / covered(other), .1, one + " and " + other);
    assertEquals(1, darkness(office.get(0)) / darkness(gnumeric.get(0)), .1);
  }
}
