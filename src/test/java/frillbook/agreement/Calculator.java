package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Program;
import frillbook.StrippedFile;
import frillbook.measure.LengthUnit;
import frillbook.pressing.WorkbookPackage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program that calculates workbooks without a window. */
interface Calculator {
  /**
   * A workbook, and what is typed into it, one set of inputs after the other.
   *
   * @param file as which it is written
   * @param inputs a Double, a String or null by the name of the cell
   */
  record Sums(XSSFWorkbook workbook, byte[] file, List<Map<String, Object>> inputs) {
    /** Those of the file that is handed out, without its values. */
    static Sums of(LengthUnit unit, List<Map<String, Object>> inputs)
        throws IOException, XMLStreamException {
      return of(PackagedFile.read(unit), StrippedFile.of(PackagedFile.of(unit)), inputs);
    }

    /** Those of a workbook that is not calculated yet. */
    static Sums of(XSSFWorkbook workbook) throws IOException, XMLStreamException {
      return of(workbook, WorkbookPackage.asItIs(workbook), List.of(Map.of()));
    }

    /** Without a value of a formula, so that the program must calculate. */
    private static Sums of(XSSFWorkbook workbook, byte[] file, List<Map<String, Object>> inputs)
        throws IOException, XMLStreamException {
      FormulaCells cells = FormulaCells.of(file);
      assertTrue(cells.formulas() > 400 && cells.values() == 0, cells.toString());
      return new Sums(workbook, file, inputs);
    }
  }

  /** What must be installed for it. */
  Program program();

  /** What each comes to with each set of inputs, in their order. */
  List<List<SheetValues>> values(List<Sums> all) throws IOException, InterruptedException;
}
