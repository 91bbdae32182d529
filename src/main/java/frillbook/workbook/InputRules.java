package frillbook.workbook;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.Phrase;
import frillbook.template.Range;
import frillbook.wording.CodeWord;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;

/** What a spreadsheet program itself refuses; the prompt stands beside the cell. */
final class InputRules {
  /** Excel's limit for the text of a validation. */
  private static final int LONGEST_REFUSAL = 225;

  private InputRules() {}

  static void add(Page page, int row, InputTemplate input) {
    DataValidationHelper helper = page.sheet().getDataValidationHelper();
    CellRangeAddressList cell =
        new CellRangeAddressList(row, row, SheetPlaces.VALUE, SheetPlaces.VALUE);
    LengthUnit unit = page.setting().unit();
    DataValidation rule =
        helper.createValidation(constraint(helper, input, unit, LineWriter.address(row)), cell);
    rule.setErrorStyle(DataValidation.ErrorStyle.STOP);
    rule.createErrorBox(
        page.phrases().say(Phrase.NOT_ACCEPTED), cut(page.refusal(input), LONGEST_REFUSAL));
    rule.setShowErrorBox(true);
    rule.setEmptyCellAllowed(input.kind() == InputKind.TEXT || input.use().optional());
    // POI's name for it is the wrong way round: true shows the arrow.
    rule.setSuppressDropDownArrow(true);
    page.sheet().addValidationData(rule);
  }

  private static DataValidationConstraint constraint(
      DataValidationHelper helper, InputTemplate input, LengthUnit unit, String cell) {
    Range range = input.range(unit);
    int between = DataValidationConstraint.OperatorType.BETWEEN;
    return switch (input.kind()) {
      case TEXT ->
          helper.createTextLengthConstraint(
              between, "0", String.valueOf(InputTemplate.LONGEST_TEXT));
      case CURRENCY -> helper.createCustomConstraint(threeCapitals(cell));
      case CHOICE ->
          helper.createExplicitListConstraint(
              input.choices().stream().map(CodeWord::word).toArray(String[]::new));
      case COUNT -> helper.createIntegerConstraint(between, plain(range.from()), plain(range.to()));
      case LENGTH, NUMBER, PERCENT ->
          helper.createDecimalConstraint(between, plain(range.from()), plain(range.to()));
    };
  }

  /** A rule has no room for all codes; what is none of them is told beside the cell. */
  private static String threeCapitals(String cell) {
    return "AND(LEN(" + cell + ")=3,EXACT(" + cell + ",UPPER(" + cell + ")))";
  }

  private static String plain(double number) {
    return FormulaTranslation.number(number);
  }

  private static String cut(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
  }
}
