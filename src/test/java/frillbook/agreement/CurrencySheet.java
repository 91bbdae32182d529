package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.template.InputTemplate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Many currencies one below the other, and what the workbook's own formulas say of each: whether it
 * can be used, and how many places it has. A whole workbook for each would take minutes.
 */
record CurrencySheet(XSSFWorkbook workbook) {
  private static final String INPUT = "currency_code";

  /** The JDK's ISO 4217 data are brought up to date between versions; ours may be behind. */
  private static final int NEWER = 3;

  /** What is no code, seems to be one, or is found only across two. */
  private static final List<Object> NONE =
      List.of(
          "", "usd", "Eur", "XAU", "XXX", "DAE", "ED ", " AE", "D A", "AED AFN", "EU", "?UR",
          840.0);

  private static final int CODE = 0;
  private static final int FAULT = 1;
  private static final int PLACES = 2;

  static CurrencySheet of() {
    SheetValues packaged = Trials.workbook(Trials.INCH).sheet();
    List<String> checked =
        Trials.TEMPLATE.checkedInputs().stream().map(InputTemplate::name).toList();
    String fault = formula(packaged.cells("input_fault").get(checked.indexOf(INPUT)));
    String places = formula(packaged.cells("money_places").get(0));
    XSSFWorkbook workbook = new XSSFWorkbook();
    XSSFSheet sheet = workbook.createSheet("Currencies");
    for (Object code : codes()) {
      XSSFRow row = sheet.createRow(sheet.getPhysicalNumberOfRows());
      fill(row.createCell(CODE), code);
      String cell = "A" + (row.getRowNum() + 1);
      row.createCell(FAULT).setCellFormula(fault.replace(INPUT, cell));
      row.createCell(PLACES).setCellFormula(places.replace(INPUT, cell));
    }
    return new CurrencySheet(workbook);
  }

  private static String formula(XSSFCell cell) {
    assertTrue(cell.getCellFormula().contains(INPUT), cell.getCellFormula());
    return cell.getCellFormula();
  }

  private static void fill(XSSFCell cell, Object code) {
    if (code instanceof Double number) {
      cell.setCellValue(number);
    } else {
      cell.setCellValue(code.toString());
    }
  }

  private static List<Currency> withCoins() {
    return Currency.getAvailableCurrencies().stream()
        .filter(currency -> currency.getDefaultFractionDigits() >= 0)
        .toList();
  }

  private static List<Object> codes() {
    List<Object> codes = new ArrayList<>(NONE);
    withCoins().forEach(currency -> codes.add(currency.getCurrencyCode()));
    return codes;
  }

  /** Of a currency the places are the JDK's ({@code java.util.Currency}, ISO 4217). */
  void requireIn(SheetValues values) {
    assertEquals(List.of(), values.errors());
    List<String> unknown = new ArrayList<>();
    for (int row = 0; row < codes().size(); row++) {
      Object code = codes().get(row);
      Object fault = values.value(values.cell("Currencies", row, FAULT));
      if (row < NONE.size()) {
        assertEquals(1.0, fault, code + " is none");
      } else if (fault.equals(1.0)) {
        unknown.add(code.toString());
      } else {
        double places = Currency.getInstance(code.toString()).getDefaultFractionDigits();
        assertEquals(0.0, fault, code + " is one");
        assertEquals(
            places, values.value(values.cell("Currencies", row, PLACES)), code + ", places");
      }
    }
    assertTrue(unknown.size() <= NEWER, "taken for none: " + unknown);
  }
}
