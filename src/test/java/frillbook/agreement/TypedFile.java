package frillbook.agreement;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A file into whose cells values are typed, by its XML. The library, which writes the whole
 * workbook anew, takes as long as another program takes to calculate it.
 *
 * @param parts of the package, in their order
 */
record TypedFile(SheetValues sheet, Map<String, byte[]> parts) {
  /**
   * The same file for any inputs.
   *
   * @param file as which {@code workbook} was written
   */
  static TypedFile of(XSSFWorkbook workbook, byte[] file) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    return new TypedFile(SheetValues.stored(workbook), parts);
  }

  /** The file with a Double, a String or nothing in the cells of these names. */
  byte[] with(Map<String, Object> inputs) throws IOException {
    Map<String, String> changed = new LinkedHashMap<>();
    inputs.forEach((name, value) -> type(sheet.cells(name).get(0), value, changed));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(Deflater.BEST_SPEED);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        String text = changed.get(part.getKey());
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(text == null ? part.getValue() : text.getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private void type(XSSFCell cell, Object value, Map<String, String> changed) {
    String part = cell.getSheet().getPackagePart().getPartName().getName().substring(1);
    String xml =
        changed.computeIfAbsent(part, of -> new String(parts.get(of), StandardCharsets.UTF_8));
    int from = xml.indexOf("<c r=\"" + cell.getReference() + "\"");
    int open = xml.indexOf('>', from);
    boolean empty = xml.charAt(open - 1) == '/';
    int to = empty ? open + 1 : xml.indexOf("</c>", open) + "</c>".length();
    String start = xml.substring(from, open).replaceAll(" t=\"[a-zA-Z]+\"|/$", "");
    changed.put(part, xml.substring(0, from) + start + content(value) + xml.substring(to));
  }

  private static String content(Object value) {
    if (value == null) {
      return "/>";
    } else if (value instanceof Double) {
      return "><v>" + value + "</v></c>";
    }
    String words = value.toString().replace("&", "&amp;").replace("<", "&lt;");
    return " t=\"inlineStr\"><is><t xml:space=\"preserve\">" + words + "</t></is></c>";
  }
}
