package frillbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Takes the stored values out of an .xlsx file, so that whoever opens it must calculate. */
public final class StrippedFile {
  /** What may stand in a formula or a value; long ones are written as CDATA. */
  private static final String TEXT = "(?:[^<]++|<!\\[CDATA\\[.*?]]>)*+";

  private static final Pattern VALUE_OF_FORMULA =
      Pattern.compile(
          "(<f(?: [^>]*)?/>|<f(?: [^>]*[^/>])?>"
              + TEXT
              + "</f>)<v(?: [^>]*)?(?:/>|>"
              + TEXT
              + "</v>)",
          Pattern.DOTALL);

  private StrippedFile() {}

  public static byte[] of(byte[] file) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(file.length);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(part.getName()));
        out.write(stripped(part.getName(), in.readAllBytes()));
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] stripped(String part, byte[] content) {
    if (!part.startsWith("xl/worksheets/sheet")) {
      return content;
    }
    Matcher cells = VALUE_OF_FORMULA.matcher(new String(content, StandardCharsets.UTF_8));
    return cells.replaceAll("$1").getBytes(StandardCharsets.UTF_8);
  }
}
