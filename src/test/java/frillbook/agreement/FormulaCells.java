package frillbook.agreement;

import frillbook.ZipParts;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The formula cells of an .xlsx file, counted in its XML.
 *
 * @param formulas cells with a formula
 * @param values of these, cells with a stored value too
 */
record FormulaCells(int formulas, int values) {

  static FormulaCells of(byte[] file) throws IOException, XMLStreamException {
    FormulaCells all = new FormulaCells(0, 0);
    for (Map.Entry<String, byte[]> part : ZipParts.of(file).entrySet()) {
      if (part.getKey().startsWith("xl/worksheets/sheet")) {
        all = all.and(ofSheet(part.getValue()));
      }
    }
    return all;
  }

  private FormulaCells and(FormulaCells more) {
    return new FormulaCells(formulas + more.formulas, values + more.values);
  }

  private static FormulaCells ofSheet(byte[] xml) throws XMLStreamException {
    XMLStreamReader reader =
        XMLInputFactory.newFactory().createXMLStreamReader(new ByteArrayInputStream(xml));
    FormulaCells counted = new FormulaCells(0, 0);
    while (reader.hasNext()) {
      if (reader.next() == XMLStreamReader.START_ELEMENT && reader.getLocalName().equals("c")) {
        counted = counted.and(ofCell(reader));
      }
    }
    return counted;
  }

  private static FormulaCells ofCell(XMLStreamReader reader) throws XMLStreamException {
    int formula = 0;
    int value = 0;
    while (reader.next() != XMLStreamReader.END_ELEMENT || !reader.getLocalName().equals("c")) {
      if (reader.isStartElement()) {
        formula = reader.getLocalName().equals("f") ? 1 : formula;
        value = reader.getLocalName().equals("v") ? 1 : value;
      }
    }
    return new FormulaCells(formula, formula * value);
  }
}
