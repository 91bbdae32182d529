package frillbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Every part of an .xlsx file as text. */
final class PackageText {
  private PackageText() {}

  /** The parts as they stand in the package, by name. */
  static Map<String, String> parts(Path file) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (InputStream stream = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(stream)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return parts;
  }

  /**
   * All that somebody wrote into the package: part names, texts and attribute values, one a line.
   * The names of elements and attributes belong to the format; pageMargins is one of them.
   */
  static List<String> said(Path file) throws IOException {
    List<String> said = new ArrayList<>();
    for (Map.Entry<String, String> part : parts(file).entrySet()) {
      said.add(part.getKey());
      try {
        addTexts(part.getValue(), said);
      } catch (XMLStreamException e) {
        throw new IOException(part.getKey() + " is no XML", e);
      }
    }
    return said;
  }

  private static void addTexts(String xml, List<String> said) throws XMLStreamException {
    XMLStreamReader reader =
        XMLInputFactory.newDefaultFactory().createXMLStreamReader(new StringReader(xml));
    while (reader.hasNext()) {
      int event = reader.next();
      if (event == XMLStreamReader.CHARACTERS || event == XMLStreamReader.COMMENT) {
        said.add(reader.getText());
      } else if (event == XMLStreamReader.START_ELEMENT) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
          said.add(reader.getAttributeValue(i));
        }
      }
    }
  }
}
