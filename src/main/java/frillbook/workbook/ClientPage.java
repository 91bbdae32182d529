package frillbook.workbook;

import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook of one sheet for the client: what the maker's sheet shows, as plain values.
 *
 * <p>It is written afresh, cell by cell, and not cut down from the maker's workbook: a part that
 * was never written cannot be left behind. No formula, name, comment or other sheet comes along.
 */
public final class ClientPage {
  private final XSSFSheet from;
  private final XSSFSheet to;
  private final Map<XSSFCellStyle, XSSFCellStyle> styles = new HashMap<>();

  private ClientPage(XSSFSheet from, XSSFSheet to) {
    this.from = from;
    this.to = to;
  }

  /**
   * The client's page of {@code template} with {@code setting}.
   *
   * @throws IllegalStateException when the template has no sheet for a client
   */
  public static XSSFWorkbook of(WorkbookTemplate template, WorkbookSetting setting) {
    SheetTemplate sheet =
        template.sheets().stream()
            .filter(SheetTemplate::client)
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no sheet is marked client: true"));
    XSSFWorkbook plan = new XSSFWorkbook();
    new WorkbookCompiler().compileInto(plan, template, setting);
    new WorkbookValues(plan).store();
    XSSFWorkbook page = new XSSFWorkbook();
    new ClientPage(plan.getSheet(sheet.name()), page.createSheet(sheet.name())).copy();
    return page;
  }

  private void copy() {
    int columns = 0;
    for (int row = 0; row <= from.getLastRowNum(); row++) {
      if (from.getRow(row) != null) {
        copy(from.getRow(row), to.createRow(row));
        columns = Math.max(columns, from.getRow(row).getLastCellNum());
      }
    }
    IntStream.range(0, columns).forEach(c -> to.setColumnWidth(c, from.getColumnWidth(c)));
    from.getMergedRegions().forEach(to::addMergedRegion);
    print();
  }

  private void copy(XSSFRow source, XSSFRow target) {
    target.setHeight(source.getHeight());
    source.forEach(cell -> copy((XSSFCell) cell, target.createCell(cell.getColumnIndex())));
  }

  private void copy(XSSFCell source, XSSFCell target) {
    target.setCellStyle(style(source.getCellStyle()));
    CellType type =
        source.getCellType() == CellType.FORMULA
            ? source.getCachedFormulaResultType()
            : source.getCellType();
    if (type == CellType.NUMERIC) {
      target.setCellValue(source.getNumericCellValue());
    } else if (type == CellType.STRING && !source.getStringCellValue().isEmpty()) {
      target.setCellValue(source.getStringCellValue());
    }
  }

  private XSSFCellStyle style(XSSFCellStyle source) {
    return styles.computeIfAbsent(
        source,
        style -> {
          XSSFCellStyle copy = to.getWorkbook().createCellStyle();
          copy.cloneStyleFrom(style);
          return copy;
        });
  }

  private void print() {
    to.setDisplayGridlines(false);
    to.setFitToPage(true);
    to.getPrintSetup().setPaperSize(from.getPrintSetup().getPaperSize());
    to.getPrintSetup().setLandscape(from.getPrintSetup().getLandscape());
    to.getPrintSetup().setFitWidth((short) 1);
    to.getPrintSetup().setFitHeight((short) 1);
    for (PageMargin margin : PageMargin.values()) {
      to.setMargin(margin, from.getMargin(margin));
    }
  }
}
