package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.Program;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook printed by LibreOffice or Gnumeric, page by page, as a person would see it. */
final class Rendered {
  /** Pixels to the inch. */
  static final int RESOLUTION = 100;

  private static final Program PDF_TO_PNG = new Program("pdftoppm", Office.PROGRAM.demandedBy());

  private static final Program GNUMERIC = new Program("ssconvert", "FRILLBOOK_REQUIRE_SSCONVERT");

  private Rendered() {}

  /** Skips a test where the programs are not installed, unless they are asked for. */
  static void assumePrograms() {
    Office.PROGRAM.requireOrSkip();
    PDF_TO_PNG.requireOrSkip();
  }

  /** The same, and Gnumeric's converter. */
  static void assumeBothPrograms() {
    assumePrograms();
    GNUMERIC.requireOrSkip();
  }

  /** The pages of {@code workbook} as Gnumeric prints them, in shades of grey. */
  static List<BufferedImage> gnumericPages(byte[] workbook, Path folder) throws IOException {
    Path file = Files.write(folder.resolve("book.xlsx"), workbook);
    run(GNUMERIC.command(), file.toString(), folder.resolve("book.pdf").toString());
    return images(folder.resolve("book.pdf"));
  }

  /** The printed pages of {@code workbook} in shades of grey. */
  static List<BufferedImage> pages(byte[] workbook, Path folder) throws IOException {
    Path file = Files.write(folder.resolve("book.xlsx"), workbook);
    Path pdf = folder.resolve("book.pdf");
    try {
      new Office().open(file).print(pdf).close().run();
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
    return images(pdf);
  }

  /** The pages of a file that was printed, in shades of grey. */
  static List<BufferedImage> images(Path pdf) throws IOException {
    Path pages = Files.createTempDirectory(pdf.getParent(), "pages");
    run(
        "pdftoppm",
        "-gray",
        "-png",
        "-r",
        String.valueOf(RESOLUTION),
        pdf.toString(),
        pages.resolve("page").toString());
    List<BufferedImage> images = new ArrayList<>();
    try (Stream<Path> files = Files.list(pages)) {
      for (Path page : files.sorted().toList()) {
        images.add(ImageIO.read(page.toFile()));
      }
    }
    return images;
  }

  private static void run(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    try {
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), command[0] + " does not end: " + said);
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
    assertEquals(0, process.exitValue(), command[0] + ": " + said);
  }

  /**
   * The same workbook with nothing to be seen but its charts, each on a page of its own: cells on
   * the sheets with charts lose their looks, and the other sheets, points among them, are hidden.
   */
  static byte[] chartsAlone(byte[] bytes) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes));
        ByteArrayOutputStream written = new ByteArrayOutputStream()) {
      XSSFCellStyle unseen = workbook.createCellStyle();
      unseen.setDataFormat(workbook.createDataFormat().getFormat(";;;"));
      for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
        if (ChartPlace.on(workbook.getSheetAt(index)).isEmpty()) {
          // LibreOffice prints a print area even of a hidden sheet.
          workbook.removePrintArea(index);
          workbook.setSheetVisibility(index, SheetVisibility.HIDDEN);
        } else {
          clear(workbook, index, unseen);
        }
      }
      workbook.write(written);
      return written.toByteArray();
    }
  }

  private static void clear(XSSFWorkbook workbook, int index, XSSFCellStyle unseen) {
    XSSFSheet sheet = workbook.getSheetAt(index);
    sheet.setRepeatingRows(null);
    sheet.getFooter().setLeft("");
    sheet.getFooter().setRight("");
    sheet.getPrintSetup().setFitHeight((short) 0);
    while (sheet.getSheetConditionalFormatting().getNumConditionalFormattings() > 0) {
      sheet.getSheetConditionalFormatting().removeConditionalFormatting(0);
    }
    sheet.forEach(row -> row.forEach(cell -> cell.setCellStyle(unseen)));
    List<ChartPlace> places = ChartPlace.on(sheet).stream().map(ChartPlace.Hung::place).toList();
    for (int row : sheet.getRowBreaks()) {
      sheet.removeRowBreak(row);
    }
    places.stream().skip(1).forEach(place -> sheet.setRowBreak(place.row() - 2));
    hideRowsBetween(sheet, places);
    int last = places.get(places.size() - 1).lastRow(sheet);
    workbook.setPrintArea(index, 0, lastColumn(sheet), places.get(0).row(), last);
  }

  /** What stands between two charts may be more than a page holds. */
  private static void hideRowsBetween(XSSFSheet sheet, List<ChartPlace> places) {
    for (int i = 1; i < places.size(); i++) {
      int title = places.get(i).row() - 1;
      for (int row = places.get(i - 1).lastRow(sheet) + 1; row < title; row++) {
        if (sheet.getRow(row) != null) {
          sheet.getRow(row).setZeroHeight(true);
        }
      }
    }
  }

  /** Something on every page, if not its title, reaches to the last column. */
  private static int lastColumn(XSSFSheet sheet) {
    return sheet.getMergedRegions().stream()
        .mapToInt(cells -> cells.getLastColumn())
        .max()
        .orElseThrow();
  }
}
