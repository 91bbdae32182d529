package frillbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file as the program writes it, into whose cells values are typed by its XML. The library, which
 * reads and writes the whole workbook anew, takes as long as another program takes to calculate it.
 */
public final class TypedFile {
  /** A formula that was saved without its value. */
  private record Formula(String text) {}

  /** A cell that has a name: the part its sheet is in, and its place on it. */
  private record Place(String part, String cell) {}

  private static final String WORKBOOK = "xl/workbook.xml";

  private static final Pattern SHEET = Pattern.compile("<sheet name=\"([^\"]+)\"");

  private static final Pattern CELL_NAME =
      Pattern.compile(
          "<definedName name=\"([a-z0-9_]+)\">'?([^'!<]+)'?!\\$([A-Z]+)\\$([0-9]+)</definedName>");

  private final Map<String, byte[]> parts;
  private final Map<String, Place> places = new HashMap<>();

  public TypedFile(byte[] file) throws IOException {
    parts = ZipParts.of(file);
    String workbook = text(WORKBOOK);
    Map<String, String> sheets = new HashMap<>();
    Matcher sheet = SHEET.matcher(workbook);
    while (sheet.find()) {
      sheets.put(sheet.group(1), "xl/worksheets/sheet" + (sheets.size() + 1) + ".xml");
    }
    Matcher name = CELL_NAME.matcher(workbook);
    while (name.find()) {
      String cell = name.group(3) + name.group(4);
      places.put(name.group(1), new Place(sheets.get(name.group(2)), cell));
    }
  }

  private String text(String part) {
    return new String(parts.get(part), StandardCharsets.UTF_8);
  }

  /** The file with a Double, a String or nothing in the cells of these names. */
  public byte[] with(Map<String, Object> inputs) throws IOException {
    Map<String, String> changed = new HashMap<>();
    inputs.forEach((name, value) -> type(place(name), value, changed));
    Map<String, byte[]> all = new LinkedHashMap<>(parts);
    changed.forEach((part, text) -> all.put(part, text.getBytes(StandardCharsets.UTF_8)));
    return ZipParts.written(all);
  }

  private Place place(String name) {
    return Objects.requireNonNull(places.get(name), () -> "no cell is named " + name);
  }

  /** The file with a formula in the cell of that name, saved without its value. */
  public byte[] withFormula(String name, String formula) throws IOException {
    return with(Map.of(name, new Formula(formula)));
  }

  private void type(Place place, Object value, Map<String, String> changed) {
    String xml = changed.computeIfAbsent(place.part(), this::text);
    int from = xml.indexOf("<c r=\"" + place.cell() + "\"");
    int open = xml.indexOf('>', from);
    boolean empty = xml.charAt(open - 1) == '/';
    int to = empty ? open + 1 : xml.indexOf("</c>", open) + "</c>".length();
    String start = xml.substring(from, open).replaceAll(" t=\"[a-zA-Z]+\"|/$", "");
    changed.put(place.part(), xml.substring(0, from) + start + content(value) + xml.substring(to));
  }

  private static String content(Object value) {
    if (value == null) {
      return "/>";
    } else if (value instanceof Double) {
      return "><v>" + value + "</v></c>";
    } else if (value instanceof Formula formula) {
      return "><f>" + escaped(formula.text()) + "</f></c>";
    }
    String words = escaped(value.toString());
    return " t=\"inlineStr\"><is><t xml:space=\"preserve\">" + words + "</t></is></c>";
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;");
  }
}
