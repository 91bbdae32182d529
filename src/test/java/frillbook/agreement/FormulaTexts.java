package frillbook.agreement;

import frillbook.calculation.CellFormulas;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The formulas of a workbook, as text and parsed; one that is filled down is parsed once. */
final class FormulaTexts {
  private final CellFormulas formulas;
  private final XSSFEvaluationWorkbook workbook;

  FormulaTexts(XSSFWorkbook written) {
    formulas = new CellFormulas(written);
    workbook = XSSFEvaluationWorkbook.create(written);
  }

  Ptg[] tokens(XSSFCell cell) {
    return formulas.tokens(cell);
  }

  /** As the library parses the cell's own text, whatever it shares with others. */
  Ptg[] parsedAlone(XSSFCell cell) {
    int sheet = cell.getSheet().getWorkbook().getSheetIndex(cell.getSheet());
    return FormulaParser.parse(
        cell.getCellFormula(), workbook, FormulaType.CELL, sheet, cell.getRowIndex());
  }

  String of(XSSFCell cell) {
    return cell.getCTCell().getF().isSetSi()
        ? FormulaRenderer.toFormulaString(workbook, tokens(cell))
        : cell.getCellFormula();
  }
}
