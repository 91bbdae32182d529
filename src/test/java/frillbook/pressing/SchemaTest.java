package frillbook.pressing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.chart.Bunting;
import frillbook.chart.Coin;
import frillbook.measure.LengthUnit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.apache.xmlbeans.impl.schema.DocumentFactory;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** The written parts against the ISO/IEC 29500 schemas that the library carries. */
final class SchemaTest {
  private static Optional<DocumentFactory<? extends XmlObject>> schema(String part) {
    if (part.startsWith("/xl/worksheets/") && part.endsWith(".xml")) {
      return Optional.of(WorksheetDocument.Factory);
    } else if (part.equals("/xl/workbook.xml")) {
      return Optional.of(WorkbookDocument.Factory);
    } else if (part.equals("/xl/styles.xml")) {
      return Optional.of(StyleSheetDocument.Factory);
    } else if (part.equals("/xl/sharedStrings.xml")) {
      return Optional.of(SstDocument.Factory);
    } else if (part.startsWith("/xl/charts/")) {
      return Optional.of(ChartSpaceDocument.Factory);
    } else if (part.startsWith("/xl/drawings/") && part.endsWith(".xml")) {
      return Optional.of(WsDrDocument.Factory);
    }
    return Optional.empty();
  }

  private static List<String> complaints(String name, XmlObject part) {
    List<XmlError> errors = new ArrayList<>();
    part.validate(new XmlOptions().setErrorListener(errors));
    return errors.stream().map(error -> name + ": " + error.getMessage()).toList();
  }

  @Test
  void everyPartIsValid() throws IOException, XmlException, InvalidFormatException {
    // Four sheets, workbook, styles, shared strings.
    areValid(7, Bunting.file(LengthUnit.INCH, Map.of()));
  }

  @Test
  void everyPartWithChartsIsValid() throws IOException, XmlException, InvalidFormatException {
    // Three sheets, workbook, styles, shared strings, five charts on two drawings.
    areValid(14, Coin.file());
    // The one sheet's: sheet, workbook, styles, shared strings, two charts on a drawing.
    areValid(7, Coin.clientPage());
  }

  private static void areValid(int parts, byte[] bytes)
      throws IOException, XmlException, InvalidFormatException {
    List<String> checked = new ArrayList<>();
    List<String> complaints = new ArrayList<>();
    try (OPCPackage file = OPCPackage.open(new ByteArrayInputStream(bytes))) {
      for (PackagePart part : file.getParts()) {
        String name = part.getPartName().getName();
        var schema = schema(name);
        if (schema.isPresent()) {
          checked.add(name);
          complaints.addAll(complaints(name, schema.get().parse(part.getInputStream())));
        }
      }
    }
    assertEquals(List.of(), complaints);
    assertEquals(parts, checked.size(), checked.toString());
  }

  @Test
  void aWrongPartIsFoundInvalid() throws XmlException {
    String wrong =
        "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
            + "<sheetData><row r=\"x\"/></sheetData></worksheet>";
    assertTrue(!complaints("wrong", WorksheetDocument.Factory.parse(wrong)).isEmpty());
  }
}
