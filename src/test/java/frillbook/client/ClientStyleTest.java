package frillbook.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** What a cell looks like in another workbook, read again from its file. */
final class ClientStyleTest {
  private static final XSSFColor GREEN = new XSSFColor(new byte[] {0x20, 0x60, 0x30});
  private static final XSSFColor SAND = new XSSFColor(new byte[] {0x60, 0x50, 0x40});

  /** To the point. */
  private static final int TWIPS = 20;

  private final XSSFWorkbook maker = new XSSFWorkbook();
  private final XSSFWorkbook client = new XSSFWorkbook();
  private final ClientStyle looks = new ClientStyle(maker, client);

  private XSSFCellStyle ofTheMaker(double size, boolean bold, XSSFColor letters) {
    XSSFFont font = maker.createFont();
    font.setFontName("Arial");
    font.setFontHeight(size);
    font.setBold(bold);
    font.setColor(letters);
    XSSFCellStyle style = maker.createCellStyle();
    style.setFont(font);
    return style;
  }

  /** The styles of the cells in the first row. */
  private static List<XSSFCellStyle> readAgain(XSSFWorkbook workbook) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    workbook.write(file);
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(file.toByteArray()))) {
      var row = read.getSheetAt(0).getRow(0);
      return List.of(row.getCell(0).getCellStyle(), row.getCell(1).getCellStyle());
    }
  }

  @Test
  void lettersFillBorderPlaceAndFormatAreTheMakers() throws IOException {
    XSSFCellStyle small = ofTheMaker(8.5, false, SAND);
    small.setWrapText(true);
    small.setIndention((short) 1);
    XSSFCellStyle large = ofTheMaker(26, true, GREEN);
    large.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    large.setFillForegroundColor(SAND);
    large.setBorderBottom(BorderStyle.MEDIUM);
    large.setBottomBorderColor(GREEN);
    large.setAlignment(HorizontalAlignment.RIGHT);
    large.setDataFormat(maker.createDataFormat().getFormat("0.00\" in\""));
    var row = client.createSheet().createRow(0);
    row.createCell(0).setCellStyle(looks.copied(small));
    row.createCell(1).setCellStyle(looks.copied(large));

    List<XSSFCellStyle> read = readAgain(client);
    assertEquals(8.5 * TWIPS, read.get(0).getFont().getFontHeight());
    assertFalse(read.get(0).getFont().getBold());
    assertEquals(SAND, read.get(0).getFont().getXSSFColor());
    assertEquals(FillPatternType.NO_FILL, read.get(0).getFillPattern());
    assertEquals(BorderStyle.NONE, read.get(0).getBorderBottom());
    assertTrue(read.get(0).getWrapText());
    assertEquals(1, read.get(0).getIndention());
    assertEquals(26 * TWIPS, read.get(1).getFont().getFontHeight());
    assertTrue(read.get(1).getFont().getBold());
    assertEquals(GREEN, read.get(1).getFont().getXSSFColor());
    assertEquals(SAND, read.get(1).getFillForegroundXSSFColor());
    assertEquals(BorderStyle.MEDIUM, read.get(1).getBorderBottom());
    assertEquals(GREEN, read.get(1).getBottomBorderXSSFColor());
    assertEquals(HorizontalAlignment.RIGHT, read.get(1).getAlignment());
    assertEquals("0.00\" in\"", read.get(1).getDataFormatString());
  }

  @Test
  void lettersThatAreTheSameAreWrittenOnce() {
    int before = client.getNumberOfFonts();
    looks.copied(ofTheMaker(9, false, SAND));
    looks.copied(ofTheMaker(9, false, SAND));
    looks.copied(ofTheMaker(9, true, SAND));
    assertEquals(before + 2, client.getNumberOfFonts());
  }
}
