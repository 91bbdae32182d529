package frillbook.agreement;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Everything in a workbook's package that a program shows or reads out: texts of cells and charts,
 * what formulas can say, prompts and lists, tabs, alternative texts, footers, words in number
 * formats, the title of the document.
 */
final class ShownWords {
  /**
   * A text and where it was found.
   *
   * @param where part and element
   */
  record Shown(String where, String text) {}

  private static final Set<String> TEXTS =
      Set.of("t", "v", "oddFooter", "oddHeader", "title", "subject", "description", "creator");
  private static final Set<String> FORMULAS = Set.of("f", "formula", "formula1", "formula2");
  private static final Set<String> ATTRIBUTES =
      Set.of("prompt", "promptTitle", "error", "errorTitle", "descr", "title");

  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(E-?[0-9]+)?");

  private static final Pattern QUOTED = Pattern.compile("\"((?:[^\"]|\"\")*)\"");

  /** What a formula looks for in words that a person typed; it shows it nowhere. */
  private static final Pattern LOOKED_FOR = Pattern.compile("FIND\\(\"[^\"]*\"");

  /** Sheet, page and number of pages in a footer. */
  private static final Pattern FOOTER_CODES = Pattern.compile("&[A-Z]");

  private final String part;
  private final List<Shown> found;
  private boolean isShared;

  private ShownWords(String part, List<Shown> found) {
    this.part = part;
    this.found = found;
  }

  static List<Shown> of(byte[] workbook) {
    List<Shown> found = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        if (part.getName().endsWith(".xml") && !part.getName().startsWith("xl/theme")) {
          new ShownWords(part.getName(), found).read(zip.readAllBytes());
        }
      }
    } catch (IOException | XMLStreamException e) {
      throw new AssertionError(e);
    }
    return found;
  }

  private void read(byte[] xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(xml));
    Deque<String> elements = new ArrayDeque<>(List.of(""));
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamReader.START_ELEMENT -> {
          elements.push(reader.getLocalName());
          attributes(reader);
        }
        case XMLStreamReader.END_ELEMENT -> elements.pop();
        case XMLStreamReader.CHARACTERS -> text(elements.peek(), reader.getText());
        default -> {
          // Nothing else is shown.
        }
      }
    }
  }

  private void attributes(XMLStreamReader reader) {
    String element = reader.getLocalName();
    if (element.equals("c")) {
      isShared = "s".equals(reader.getAttributeValue(null, "t"));
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i);
      if (ATTRIBUTES.contains(name) || element.equals("sheet") && name.equals("name")) {
        add(element + " " + name, reader.getAttributeValue(i));
      } else if (name.equals("formatCode")) {
        quoted(name, reader.getAttributeValue(i));
      }
    }
  }

  private void text(String element, String text) {
    if (FORMULAS.contains(element)) {
      quoted(element, LOOKED_FOR.matcher(text).replaceAll(""));
    } else if (TEXTS.contains(element) && !(isShared && element.equals("v"))) {
      add(element, isNumber(text) ? "" : FOOTER_CODES.matcher(text).replaceAll(""));
    }
  }

  private static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  private void quoted(String element, String text) {
    Matcher quoted = QUOTED.matcher(text);
    while (quoted.find()) {
      add(element, quoted.group(1));
    }
  }

  private void add(String where, String text) {
    if (!text.isBlank()) {
      found.add(new Shown(part + " " + where, text));
    }
  }
}
