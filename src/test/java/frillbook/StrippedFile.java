package frillbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    Map<String, byte[]> parts = ZipParts.of(file);
    parts.replaceAll(StrippedFile::stripped);
    return ZipParts.written(parts);
  }

  private static byte[] stripped(String part, byte[] content) {
    if (!part.startsWith("xl/worksheets/sheet")) {
      return content;
    }
    Matcher cells = VALUE_OF_FORMULA.matcher(new String(content, StandardCharsets.UTF_8));
    return cells.replaceAll("$1").getBytes(StandardCharsets.UTF_8);
  }
}
