package frillbook.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Turns a workbook into the bytes of an .xlsx file, the same ones every time. */
public final class WorkbookPackage {
  private static final String PROGRAM = "frillbook";

  /** Stands where a program would put the time of writing, which would make files differ. */
  private static final Instant MADE = Instant.parse("2025-01-01T00:00:00Z");

  /**
   * Of every zip entry; local, so that no time zone shows in it. Not the earliest time an entry can
   * have, which Java takes for an earlier one and stamps with the zone.
   */
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2025, 1, 1, 0, 0);

  /** A reader of the file must find this part first (ISO/IEC 29500-2). */
  private static final String CONTENT_TYPES = "[Content_Types].xml";

  private static final String SHEETS = "xl/worksheets/sheet";

  private WorkbookPackage() {}

  /**
   * The file of {@code workbook}, every formula with its value, for programs that only show values.
   * A program that calculates is asked to do so on opening. The same workbook gives the same bytes
   * on any day, in any locale and time zone.
   */
  public static byte[] bytes(XSSFWorkbook workbook) {
    new WorkbookValues(workbook).store();
    PrintAreas.set(workbook);
    return asItIs(workbook);
  }

  /**
   * The file of {@code workbook} as it is: formulas that nobody has calculated have no value, and
   * whoever opens it must calculate.
   */
  public static byte[] asItIs(XSSFWorkbook workbook) {
    workbook.setForceFormulaRecalculation(true);
    fixProperties(workbook.getProperties());
    try (ByteArrayOutputStream written = new ByteArrayOutputStream()) {
      workbook.write(written);
      return rezipped(written.toByteArray());
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

  /** The same parts in a settled order, with a settled time. */
  private static byte[] rezipped(byte[] zip) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(zip.length);
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(Deflater.BEST_COMPRESSION);
      for (Map.Entry<String, byte[]> part : parts(zip).entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(ENTRY_TIME);
        out.putNextEntry(entry);
        out.write(
            part.getKey().startsWith(SHEETS) ? FillDown.share(part.getValue()) : part.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
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

  /**
   * Writes a file beside {@code target} and moves it into place, so that there is never half a
   * workbook. Without {@code overwrite} a file that is already there stays as it is.
   *
   * @throws WorkbookFileException when the file is there, is none, or cannot be written
   */
  public static void save(byte[] bytes, Path target, boolean overwrite) {
    Path place = target.toAbsolutePath();
    // Not a folder, and no device either: moving a file into its place would destroy it.
    if (Files.exists(place) && !Files.isRegularFile(place)) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NOT_WRITABLE, target, null);
    } else if (Files.exists(place) && !overwrite) {
      throw new WorkbookFileException(WorkbookFileException.Reason.EXISTS, target, null);
    } else if (!Files.isDirectory(place.getParent())) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NO_FOLDER, target, null);
    }
    try {
      writeBeside(bytes, Files.exists(place) ? place.toRealPath() : place);
    } catch (IOException e) {
      throw new WorkbookFileException(WorkbookFileException.Reason.NOT_WRITABLE, target, e);
    }
  }

  private static void writeBeside(byte[] bytes, Path place) throws IOException {
    Path part = place.resolveSibling("." + place.getFileName() + ".part");
    try {
      // Not a temporary file of the library's: those can be read by their owner alone.
      Files.write(
          part,
          bytes,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE);
      Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
