package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Elsewhere;
import frillbook.ZipParts;
import frillbook.calculation.WorkbookValues;
import frillbook.chart.Bunting;
import frillbook.measure.LengthUnit;
import frillbook.press.Version;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

@Isolated("language and time zone hold for the whole process")
final class WorkbookPackageTest {
  private final byte[] bytes = Bunting.file(LengthUnit.INCH, Map.of());

  @TempDir Path folder;

  @Test
  void theSameInputGivesTheSameBytes() {
    assertArrayEquals(bytes, Bunting.file(LengthUnit.INCH, Map.of()));
  }

  @Test
  void theBytesDoNotDependOnLocaleOrTimeZone() {
    byte[] there =
        Elsewhere.in("de-DE", "Pacific/Auckland", () -> Bunting.file(LengthUnit.INCH, Map.of()));
    assertArrayEquals(bytes, there);
  }

  @Test
  void writingTwiceGivesTheSameBytes() {
    XSSFWorkbook workbook = Bunting.compiled(LengthUnit.INCH);
    assertArrayEquals(WorkbookPackage.asItIs(workbook), WorkbookPackage.asItIs(workbook));
  }

  @Test
  void anotherInputGivesOtherBytes() {
    byte[] other = Bunting.file(LengthUnit.INCH, Map.of("tape", 101.0));
    assertFalse(Arrays.equals(bytes, other));
  }

  @Test
  void calculatedValuesAreStored() throws IOException {
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      WorkbookValues values = new WorkbookValues(read);
      assertEquals(15.0, values.value("flag_count"), values.where("flag_count"));
      assertEquals("about 15 flags of 6.5 in", values.value("verdict"), values.where("verdict"));
      assertTrue(read.getForceFormulaRecalculation());
    }
  }

  /** By hand: a flag that begins at 1 1/4 has its third at 1 1/4 + 6 1/2 ÷ 3 = 3 5/12. */
  @Test
  void numbersAreStoredToTwelveFigures() throws IOException {
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      CTCell third = read.getSheet("Flag by flag").getRow(4).getCell(4).getCTCell();
      assertEquals("3.41666666667", third.getV());
      assertFalse(third.isSetT(), "a number is what a cell holds where nothing is said");
    }
  }

  @Test
  void thePackageHoldsNoMacroNoExternalLinkAndNoOneNamed() throws IOException {
    Map<String, String> parts = ZipParts.texts(bytes);
    assertTrue(parts.size() > 5, parts.keySet().toString());
    for (Map.Entry<String, String> part : parts.entrySet()) {
      assertFalse(part.getKey().matches(".*(vbaProject|externalLink|printerSettings).*"));
      assertFalse(part.getValue().contains("TargetMode=\"External\""), part.getKey());
    }
    String core = parts.get("docProps/core.xml");
    assertTrue(core.contains("<dc:creator>frillbook</dc:creator>"), core);
    assertTrue(core.contains("<dc:title>A string of bunting</dc:title>"), core);
    assertFalse(core.contains(System.getProperty("user.name") + "<"), core);
  }

  @Test
  void theFileSaysWithWhichVersionItWasMade() throws IOException {
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      var own = read.getProperties().getCustomProperties();
      assertEquals(Version.NUMBER, own.getProperty("frillbook version").getLpwstr());
    }
  }

  @Test
  void theContentTypesComeFirst() throws IOException {
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      assertEquals("[Content_Types].xml", in.getNextEntry().getName());
    }
  }
}
