package frillbook.cli;

import frillbook.ZipParts;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Every part of an .xlsx file as text. */
final class PackageText {
  /** Attributes that say where something stands or how much of it there is, by their elements. */
  private static final Set<String> ADDRESSES =
      Set.of(
          "dimension ref",
          "row r",
          "row spans",
          "c r",
          "mergeCell ref",
          "mergeCells count",
          "sst count",
          "sst uniqueCount",
          "ptCount val",
          "pt idx");

  /** Elements whose text may speak of cells. */
  private static final Set<String> FORMULAS = Set.of("f", "definedName");

  private static final Pattern CELL = Pattern.compile("\\$?\\b[A-Z]{1,3}\\$?[1-9][0-9]*\\b");

  private final List<String> said = new ArrayList<>();
  private boolean isShared;

  private PackageText() {}

  /** The parts as they stand in the package, by name. */
  static Map<String, String> parts(Path file) throws IOException {
    return ZipParts.texts(Files.readAllBytes(file));
  }

  /**
   * All that somebody wrote into the package: part names, texts and attribute values, one a line.
   *
   * <p>What belongs to the format is left out: the names of elements and attributes, pageMargins
   * among them; where a cell or a point stands, and how many there are; which of the shared texts a
   * cell has. The shared texts themselves are a part like any other.
   */
  static List<String> said(Path file) throws IOException {
    List<String> said = new ArrayList<>();
    for (Map.Entry<String, String> part : parts(file).entrySet()) {
      said.add(part.getKey());
      try {
        said.addAll(said(part.getValue()));
      } catch (XMLStreamException e) {
        throw new IOException(part.getKey() + " is no XML", e);
      }
    }
    return said;
  }

  /** The same for the text of one part. */
  static List<String> said(String xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(xml));
    PackageText text = new PackageText();
    Deque<String> elements = new ArrayDeque<>(List.of(""));
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamReader.START_ELEMENT -> {
          elements.push(reader.getLocalName());
          text.attributes(reader);
        }
        case XMLStreamReader.END_ELEMENT -> elements.pop();
        case XMLStreamReader.CHARACTERS -> text.words(elements.peek(), reader.getText());
        case XMLStreamReader.COMMENT, XMLStreamReader.PROCESSING_INSTRUCTION ->
            text.said.add(reader.hasText() ? reader.getText() : reader.getPIData());
        default -> {
          // Nothing else holds words.
        }
      }
    }
    return text.said;
  }

  private void attributes(XMLStreamReader reader) {
    if (reader.getLocalName().equals("c")) {
      isShared = "s".equals(reader.getAttributeValue(null, "t"));
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (!ADDRESSES.contains(reader.getLocalName() + " " + reader.getAttributeLocalName(i))) {
        said.add(reader.getAttributeValue(i));
      }
    }
  }

  private void words(String element, String text) {
    boolean isNumberOfText = isShared && element.equals("v");
    if (!isNumberOfText) {
      said.add(FORMULAS.contains(element) ? CELL.matcher(text).replaceAll("") : text);
    }
  }
}
