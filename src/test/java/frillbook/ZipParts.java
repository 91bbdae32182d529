package frillbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The parts of an .xlsx file by name. */
public final class ZipParts {
  private ZipParts() {}

  /** In their order. */
  public static Map<String, byte[]> of(byte[] file) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  /** As text, in the order of their names. */
  public static Map<String, String> texts(byte[] file) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    of(file).forEach((name, part) -> texts.put(name, new String(part, StandardCharsets.UTF_8)));
    return texts;
  }

  /** A file of these parts. */
  static byte[] written(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(Deflater.BEST_SPEED);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
