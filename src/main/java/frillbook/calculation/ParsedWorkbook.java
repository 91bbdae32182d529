package frillbook.calculation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook as the evaluator sees it, its cells read and its formulas parsed once. The library
 * would read and parse them again every time a cell is calculated, which takes most of the time of
 * a recalculation.
 */
public final class ParsedWorkbook implements EvaluationWorkbook {
  private static final Ptg[] NO_FORMULA = new Ptg[0];

  private final XSSFEvaluationWorkbook workbook;
  private final CellFormulas formulas;
  private final List<ParsedSheet> sheets = new ArrayList<>();
  private final AtomicInteger cells = new AtomicInteger();
  private final Map<Integer, EvaluationName> names = new HashMap<>();
  private final Map<String, Integer> sheetIndexes = new HashMap<>();

  ParsedWorkbook(XSSFWorkbook written) {
    this.workbook = XSSFEvaluationWorkbook.create(written);
    this.formulas = new CellFormulas(written);
    for (int index = 0; index < written.getNumberOfSheets(); index++) {
      sheets.add(
          new ParsedSheet(written.getSheetAt(index), index, this::parsed, cells::getAndIncrement));
    }
  }

  private Ptg[] parsed(XSSFCell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? CellByCell.sumproducts(formulas.tokens(cell))
        : NO_FORMULA;
  }

  @Override
  public Ptg[] getFormulaTokens(EvaluationCell cell) {
    return ((ParsedCell) cell).formula();
  }

  @Override
  public String getSheetName(int sheetIndex) {
    return workbook.getSheetName(sheetIndex);
  }

  @Override
  public int getSheetIndex(EvaluationSheet sheet) {
    return ((ParsedSheet) sheet).index();
  }

  /** Asked for every name and reference to another sheet; the library looks through all sheets. */
  @Override
  public int getSheetIndex(String sheetName) {
    return sheetIndexes.computeIfAbsent(sheetName, workbook::getSheetIndex);
  }

  @Override
  public ParsedSheet getSheet(int sheetIndex) {
    return sheets.get(sheetIndex);
  }

  @Override
  public ExternalSheet getExternalSheet(int externSheetIndex) {
    return workbook.getExternalSheet(externSheetIndex);
  }

  @Override
  public ExternalSheet getExternalSheet(
      String firstSheetName, String lastSheetName, int externalWorkbookNumber) {
    return workbook.getExternalSheet(firstSheetName, lastSheetName, externalWorkbookNumber);
  }

  @Override
  public int convertFromExternSheetIndex(int externSheetIndex) {
    return workbook.convertFromExternSheetIndex(externSheetIndex);
  }

  @Override
  public ExternalName getExternalName(int externSheetIndex, int externNameIndex) {
    return workbook.getExternalName(externSheetIndex, externNameIndex);
  }

  @Override
  public ExternalName getExternalName(
      String nameName, String sheetName, int externalWorkbookNumber) {
    return workbook.getExternalName(nameName, sheetName, externalWorkbookNumber);
  }

  @Override
  public EvaluationName getName(NamePtg name) {
    return names.computeIfAbsent(name.getIndex(), index -> ParsedName.of(workbook.getName(name)));
  }

  @Override
  public EvaluationName getName(String name, int sheetIndex) {
    return workbook.getName(name, sheetIndex);
  }

  @Override
  public String resolveNameXText(NameXPtg name) {
    return workbook.resolveNameXText(name);
  }

  @Override
  public UDFFinder getUDFFinder() {
    return workbook.getUDFFinder();
  }

  @Override
  public SpreadsheetVersion getSpreadsheetVersion() {
    return workbook.getSpreadsheetVersion();
  }

  /** Nothing to clear: the evaluator keeps the results. */
  @Override
  public void clearAllCachedResultValues() {}
}
