package frillbook.chart;

import frillbook.calculation.WorkbookValues;
import frillbook.look.NumberFormats;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumVal;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrVal;

/**
 * Stores in every chart the values of the cells that feed it, for programs that show a chart
 * without reading its cells, as previews on a phone do. A cell without a number has no point.
 * Petals are left out: they are thousands of points, and two series share most of them.
 */
public final class ChartCaches {
  private final XSSFWorkbook workbook;

  private ChartCaches(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /** Fills the charts of a workbook whose cells have their values. */
  public static void store(XSSFWorkbook workbook) {
    ChartCaches caches = new ChartCaches(workbook);
    workbook.forEach(
        sheet ->
            ChartPlace.on((XSSFSheet) sheet).stream()
                .filter(hung -> hung.plot().sizeOfRadarChartArray() == 0)
                .forEach(hung -> ChartReferences.each(hung.plot(), caches::store, caches::store)));
  }

  private void store(CTNumRef reference) {
    List<XSSFCell> cells = ChartReferences.cells(workbook, reference.getF());
    CTNumData cache = CTNumData.Factory.newInstance();
    cache.setFormatCode(format(cells.get(0)));
    cache.addNewPtCount().setVal(cells.size());
    for (int index = 0; index < cells.size(); index++) {
      if (WorkbookValues.stored(cells.get(index)) instanceof Double number) {
        CTNumVal point = cache.addNewPt();
        point.setIdx(index);
        point.setV(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
      }
    }
    reference.setNumCache(cache);
  }

  private static String format(XSSFCell cell) {
    return cell == null ? NumberFormats.GENERAL : cell.getCellStyle().getDataFormatString();
  }

  private void store(CTStrRef reference) {
    List<XSSFCell> cells = ChartReferences.cells(workbook, reference.getF());
    CTStrData cache = CTStrData.Factory.newInstance();
    cache.addNewPtCount().setVal(cells.size());
    for (int index = 0; index < cells.size(); index++) {
      CTStrVal point = cache.addNewPt();
      point.setIdx(index);
      point.setV(WorkbookValues.stored(cells.get(index)).toString());
    }
    reference.setStrCache(cache);
  }
}
