package frillbook.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTRadarSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.chart.STMarkerStyle;
import org.openxmlformats.schemas.drawingml.x2006.chart.STRadarStyle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTSolidColorFillProperties;

/** The charts of the coin, reread from the written file. */
final class ChartWriterTest {
  private static XSSFSheet coin() {
    return reread(Coin.file()).getSheet("Coin");
  }

  private static XSSFWorkbook reread(byte[] bytes) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static CTPlotArea plot(XSSFSheet sheet, int index) {
    return ChartPlace.on(sheet).get(index).plot();
  }

  private static CTScatterSer series(XSSFSheet sheet, int chart, int index) {
    return plot(sheet, chart).getScatterChartArray(0).getSerArray(index);
  }

  @Test
  void aSeriesReadsAbsoluteCellsOfAnotherSheet() {
    CTScatterSer rim = series(coin(), 0, 0);
    assertEquals("'Coin points'!$A$4:$A$52", rim.getXVal().getNumRef().getF());
    assertEquals("'Coin points'!$B$4:$B$52", rim.getYVal().getNumRef().getF());
  }

  @Test
  void barsReadTheirWordsAndTheirNumbersFromCells() {
    CTBarSer bars = plot(coin(), 2).getBarChartArray(0).getSerArray(0);
    assertEquals("'Coin points'!$A$78:$A$80", bars.getCat().getStrRef().getF());
    assertEquals("'Coin points'!$B$78:$B$80", bars.getVal().getNumRef().getF());
  }

  private static CTRadarSer petals(int index) {
    return plot(coin(), 3).getRadarChartArray(0).getSerArray(index);
  }

  /** Of 26 rows two are those by which one of the series is turned. */
  @Test
  void petalsThatAreTurnedReadTheSameColumnFurtherDown() {
    assertEquals("'Coin points'!$A$86:$A$109", petals(0).getVal().getNumRef().getF());
    assertEquals("'Coin points'!$A$84:$A$107", petals(1).getVal().getNumRef().getF());
  }

  @Test
  void petalsShowThroughTheirFillAndTheirLine() {
    assertEquals(
        STRadarStyle.FILLED, plot(coin(), 3).getRadarChartArray(0).getRadarStyle().getVal());
    assertEquals(10_000, covers(petals(0).getSpPr().getSolidFill()));
    assertTrue(petals(0).getSpPr().getLn().isSetNoFill());
    assertEquals(25_000, covers(petals(1).getSpPr().getSolidFill()));
    // Three quarters of a point of 12700 EMU.
    assertEquals(9525, petals(1).getSpPr().getLn().getW());
    assertEquals(60_000, covers(petals(1).getSpPr().getLn().getSolidFill()));
  }

  /** In thousandths of a percent. */
  private static Object covers(CTSolidColorFillProperties paint) {
    return paint.getSrgbClr().getAlphaArray(0).getVal();
  }

  @Test
  void petalsHaveASquareAndReachFromTheCentreToOne() {
    ChartPlace place = ChartPlace.on(coin()).get(3).place();
    assertEquals(8 * 16, place.height(), 1e-9);
    assertEquals(8 * 16, place.width(), 1e-9);
    CTValAx out = plot(coin(), 3).getValAxArray(0);
    assertTrue(out.getDelete().getVal());
    assertTrue(plot(coin(), 3).getCatAxArray(0).getDelete().getVal());
    assertEquals(0, out.getScaling().getMin().getVal());
    assertEquals(1, out.getScaling().getMax().getVal());
  }

  @Test
  void theCellsOfASeriesHoldItsPoints() {
    XSSFSheet points = coin().getWorkbook().getSheet("Coin points");
    // 0.8 cos 0°, 0.8 cos 60°, 0.8 cos 180°; every point is 7.5° on.
    assertEquals(0.8, points.getRow(3).getCell(0).getNumericCellValue(), 1e-12);
    assertEquals(0.4, points.getRow(3 + 8).getCell(0).getNumericCellValue(), 1e-12);
    assertEquals(-0.8, points.getRow(3 + 24).getCell(0).getNumericCellValue(), 1e-12);
  }

  /** The cells hold them already; every program that shows the maker's sheets reads cells. */
  @Test
  void theMakersChartsHoldNoPointsOfTheirOwn() {
    assertFalse(series(coin(), 0, 0).getXVal().getNumRef().isSetNumCache());
    assertFalse(series(coin(), 0, 0).getYVal().getNumRef().isSetNumCache());
    CTBarSer bars = plot(coin(), 2).getBarChartArray(0).getSerArray(0);
    assertFalse(bars.getCat().getStrRef().isSetStrCache());
    assertFalse(bars.getVal().getNumRef().isSetNumCache());
  }

  @Test
  void everySeriesHasALineOfItsOwnAndNoMarkerUnlessAsked() {
    XSSFSheet sheet = coin();
    // 2.5 and 1.5 points of 12700 EMU.
    assertEquals(31750, series(sheet, 0, 0).getSpPr().getLn().getW());
    assertEquals(19050, series(sheet, 0, 1).getSpPr().getLn().getW());
    assertTrue(series(sheet, 0, 1).getSpPr().getLn().isSetPrstDash());
    assertTrue(series(sheet, 0, 2).getSpPr().getLn().isSetNoFill());
    assertEquals(STMarkerStyle.NONE, series(sheet, 0, 0).getMarker().getSymbol().getVal());
    assertEquals(STMarkerStyle.CIRCLE, series(sheet, 0, 2).getMarker().getSymbol().getVal());
  }

  @Test
  void onlyAChartThatAsksForItIsSmooth() {
    XSSFSheet page = coin().getWorkbook().getSheet("Page");
    assertFalse(series(coin(), 0, 0).getSmooth().getVal());
    assertTrue(series(page, 0, 0).getSmooth().getVal());
  }

  @Test
  void aDrawingsAxesAreHiddenAndReachALittleBeyondItsEnds() {
    for (CTValAx axis : plot(coin(), 0).getValAxList()) {
      assertTrue(axis.getDelete().getVal());
      // 1.5 % of the 2 units from −1 to 1 at each end.
      assertEquals(-1.03, axis.getScaling().getMin().getVal(), 1e-12);
      assertEquals(1.03, axis.getScaling().getMax().getVal(), 1e-12);
    }
  }

  @Test
  void axesThatAreReadHaveLabelsWithTheirUnit() {
    CTValAx across = plot(coin(), 1).getValAxArray(0);
    assertFalse(across.getDelete().getVal());
    assertEquals(
        "Radius, cm", across.getTitle().getTx().getRich().getPArray(0).getRArray(0).getT());
    assertEquals(10, across.getScaling().getMax().getVal());
    assertFalse(plot(coin(), 1).getValAxArray(1).getScaling().isSetMax());
  }

  @Test
  void aDrawingsPlotHasTheProportionsOfItsAxes() {
    XSSFSheet page = reread(Coin.file()).getSheet("Page");
    ChartPlace place = ChartPlace.on(page).get(0).place();
    var layout = plot(page, 0).getLayout().getManualLayout();
    double wide = layout.getW().getVal() * place.width();
    double high = layout.getH().getVal() * place.height();
    // −1…1 across, −1…2 upwards.
    assertEquals(2.0 / 3, wide / high, 1e-4);
  }

  @Test
  void aChartSaysWhatItIsToThoseWhoCannotSeeIt() {
    ChartPlace place = ChartPlace.on(coin()).get(0).place();
    assertEquals("The coin from above", place.label());
    assertEquals("A circle of radius 0.8 cm with a square around it.", place.alt());
  }

  @Test
  void theSentenceAboveStatesTheFinding() {
    XSSFSheet sheet = coin();
    int row = ChartPlace.on(sheet).get(0).place().row() - 1;
    assertEquals("A coin of radius 0.8", sheet.getRow(row).getCell(0).getStringCellValue());
  }

  @Test
  void chartsLieBelowEachOther() {
    XSSFSheet sheet = coin();
    List<ChartPlace> places = ChartPlace.on(sheet).stream().map(ChartPlace.Hung::place).toList();
    // Title and input; then 18, 14 and 8 rows of chart, each with a sentence above and a free row,
    // and a line before the last sentence.
    assertEquals(List.of(3, 23, 39, 50), places.stream().map(ChartPlace::row).toList());
    for (int next = 1; next < places.size(); next++) {
      assertTrue(places.get(next - 1).lastRow(sheet) < places.get(next).row() - 1);
    }
  }

  @Test
  void aChartThatWouldBeCutBeginsANewPage() {
    // Title 30, input 19, charts of 22 + 19 × 16 and 22 + 15 × 16: 637 of about 773 points are
    // taken, too many for 22 + 8 × 16 more.
    assertArrayEquals(new int[] {37}, coin().getRowBreaks());
  }

  @Test
  void theSameTemplateGivesTheSameBytes() {
    assertArrayEquals(Coin.file(), Coin.file());
  }

  @Test
  void theClientsChartReadsPlainValuesOfItsOwnSheet() {
    XSSFSheet page = reread(Coin.clientPage()).getSheetAt(0);
    CTScatterSer rim = series(page, 0, 0);
    assertEquals("Page!$U$2:$U$50", rim.getXVal().getNumRef().getF());
    assertEquals(0.4, page.getRow(1 + 8).getCell(20).getNumericCellValue());
    CTBarSer bars = plot(page, 1).getBarChartArray(0).getSerArray(0);
    assertEquals("Page!$W$2:$W$4", bars.getCat().getStrRef().getF());
    assertEquals("wage", page.getRow(1 + 2).getCell(22).getStringCellValue());
  }

  @Test
  void theClientsChartsKeepTheirPointsForThoseWhoReadNoCells() {
    XSSFSheet page = reread(Coin.clientPage()).getSheetAt(0);
    CTNumData across = series(page, 0, 0).getXVal().getNumRef().getNumCache();
    assertEquals(49, across.getPtCount().getVal());
    assertEquals("0.8", across.getPtArray(0).getV());
    assertEquals("0.4", across.getPtArray(8).getV());
    assertEquals("-0.8", across.getPtArray(24).getV());
    CTBarSer bars = plot(page, 1).getBarChartArray(0).getSerArray(0);
    assertEquals("copper", bars.getCat().getStrRef().getStrCache().getPtArray(1).getV());
    assertEquals("12.5", bars.getVal().getNumRef().getNumCache().getPtArray(0).getV());
  }

  @Test
  void theClientsPointsAreNotPrinted() {
    XSSFWorkbook page = reread(Coin.clientPage());
    // Title, 18 and 8 rows of chart, each with a sentence above and a free row.
    assertEquals("Page!$A$1:$C$31", page.getPrintArea(0));
  }
}
