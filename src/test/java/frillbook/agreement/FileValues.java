package frillbook.agreement;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The values stored in an .xlsx file that another program has written, read from its XML. The
 * library, which makes an object of every cell, takes eight times as long.
 */
final class FileValues {
  private static final XMLInputFactory XML = XMLInputFactory.newFactory();

  /** An error value such as {@code #DIV/0!}. */
  private record Wrong(String text) {
    @Override
    public String toString() {
      return text;
    }
  }

  private final List<String> shared = new ArrayList<>();

  /** By the name of the sheet and the address of the cell. */
  private final Map<String, Map<String, Object>> sheets = new HashMap<>();

  private FileValues() {}

  /**
   * Reads a file whose sheets are in the order of those of {@code written}.
   *
   * @param written the workbook the program was given
   */
  static FileValues of(XSSFWorkbook written, Path file) throws IOException {
    FileValues values = new FileValues();
    try (ZipFile parts = new ZipFile(file.toFile())) {
      values.readShared(parts);
      for (int index = 0; index < written.getNumberOfSheets(); index++) {
        String part = "xl/worksheets/sheet" + (index + 1) + ".xml";
        try (InputStream in = parts.getInputStream(parts.getEntry(part))) {
          values.sheets.put(
              written.getSheetName(index), values.cells(XML.createXMLStreamReader(in)));
        }
      }
    } catch (XMLStreamException e) {
      throw new IOException(e);
    }
    return values;
  }

  private void readShared(ZipFile parts) throws IOException, XMLStreamException {
    try (InputStream in = parts.getInputStream(parts.getEntry("xl/sharedStrings.xml"))) {
      XMLStreamReader xml = XML.createXMLStreamReader(in);
      StringBuilder text = new StringBuilder();
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("t")) {
          text.append(xml.getElementText());
        } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("si")) {
          shared.add(text.toString());
          text.setLength(0);
        }
      }
    }
  }

  private Map<String, Object> cells(XMLStreamReader xml) throws XMLStreamException {
    Map<String, Object> cells = new HashMap<>();
    String address = "";
    String kind = "";
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        if (xml.getLocalName().equals("c")) {
          address = xml.getAttributeValue(null, "r");
          kind = xml.getAttributeValue(null, "t");
        } else if (xml.getLocalName().equals("v")) {
          cells.put(address, value(kind == null ? "n" : kind, xml.getElementText()));
        }
      }
    }
    return cells;
  }

  private Object value(String kind, String written) {
    return switch (kind) {
      case "s" -> shared.get(Integer.parseInt(written));
      case "str" -> written;
      case "b" -> written.equals("1");
      case "e" -> new Wrong(written);
      case "n" -> written.isEmpty() ? "" : (Object) Double.valueOf(written);
      default -> throw new IllegalArgumentException("a cell of the kind " + kind);
    };
  }

  /** A Double, a Boolean or a String; empty for a blank cell. */
  Object value(XSSFCell cell) {
    return sheets
        .get(cell.getSheet().getSheetName())
        .getOrDefault(cell.getAddress().formatAsString(), "");
  }

  /** Every cell that shows an error, with its address. */
  List<String> errors() {
    List<String> errors = new ArrayList<>();
    sheets.forEach(
        (sheet, cells) ->
            cells.forEach(
                (address, value) -> {
                  if (value instanceof Wrong) {
                    errors.add(sheet + "!" + address + " is " + value);
                  }
                }));
    return errors;
  }
}
