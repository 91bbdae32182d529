package frillbook.pressing;

import frillbook.press.PackageWriter;
import frillbook.press.Press;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Comparator;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Turns a workbook into the bytes of an .xlsx file, the same ones every time. */
public final class WorkbookPackage {
  private static final String PROGRAM = "frillbook";

  /** Stands where a program would put the time of writing, which would make files differ. */
  private static final Instant MADE = Instant.parse("2025-01-01T00:00:00Z");

  /** A reader of the file must find this part first (ISO/IEC 29500-2). */
  private static final String CONTENT_TYPES = "[Content_Types].xml";

  private WorkbookPackage() {}

  /**
   * The file of {@code workbook} as it is: formulas that nobody has calculated have no value, and
   * whoever opens it must calculate.
   */
  public static byte[] asItIs(XSSFWorkbook workbook) {
    try (PackageWriter out = new PackageWriter(Press.DEFLATE_LEVEL)) {
      parts(workbook).forEach((name, bytes) -> out.add(name, bytes, bytes.length));
      return out.finished();
    }
  }

  /** The parts of the file by name, in the order in which they are written. */
  static Map<String, byte[]> parts(XSSFWorkbook workbook) {
    workbook.setForceFormulaRecalculation(true);
    fixProperties(workbook.getProperties());
    try (ByteArrayOutputStream written = new ByteArrayOutputStream()) {
      workbook.write(written);
      return parts(written.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void fixProperties(POIXMLProperties properties) {
    Optional<Date> made = Optional.of(Date.from(MADE));
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setCreator(PROGRAM);
    core.setLastModifiedByUser(PROGRAM);
    core.setCreated(made);
    core.getUnderlyingProperties().setModifiedProperty(made);
    properties.getExtendedProperties().setApplication(PROGRAM);
  }

  private static Map<String, byte[]> parts(byte[] zip) throws IOException {
    Comparator<String> firstPart = Comparator.comparing(name -> !name.equals(CONTENT_TYPES));
    Map<String, byte[]> parts = new TreeMap<>(firstPart.thenComparing(Comparator.naturalOrder()));
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.put(entry.getName(), in.readAllBytes());
      }
    }
    return parts;
  }
}
