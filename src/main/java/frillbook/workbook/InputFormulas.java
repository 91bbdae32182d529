package frillbook.workbook;

import frillbook.look.Span;
import frillbook.measure.Currencies;
import frillbook.template.InputTemplate;
import frillbook.template.Range;
import java.util.stream.Collectors;

/** The formulas that judge what is typed into an input. */
final class InputFormulas {
  private final Page page;
  private final FormulaTranslation formulas;

  InputFormulas(Page page, FormulaTranslation formulas) {
    this.page = page;
    this.formulas = formulas;
  }

  /** 1 where the cell {@code cell} is used and cannot be. */
  String fault(InputTemplate input, String cell) {
    String judged = judged(input, cell);
    return input
        .use()
        .when()
        .map(used -> "IF(" + formulas.render(used) + "," + judged + ",0)")
        .orElse(judged);
  }

  /**
   * 1 where the cell {@code cell} is blank, of the wrong kind or out of range. Nested, because a
   * spreadsheet evaluates every part of AND, and a text cannot be compared or rounded.
   */
  private String judged(InputTemplate input, String cell) {
    Range range = input.range(page.setting().unit());
    String from = FormulaTranslation.number(range.from());
    String within = cell + ">=" + from + "," + cell + "<=" + FormulaTranslation.number(range.to());
    return switch (input.kind()) {
      case TEXT -> "IF(LEN(" + cell + ")<=" + InputTemplate.LONGEST_TEXT + ",0,1)";
      case CURRENCY -> "IF(ISTEXT(" + cell + "),IF(" + isCurrency(cell) + ",0,1),1)";
      case CHOICE -> "IF(ISTEXT(" + cell + "),IF(" + oneOf(input, cell) + ",0,1),1)";
      case COUNT ->
          "IF(ISNUMBER("
              + cell
              + "),IF(AND("
              + within
              + ","
              + cell
              + "=INT("
              + cell
              + ")),0,1),"
              + other(input, cell)
              + ")";
      case LENGTH, NUMBER, PERCENT ->
          "IF(ISNUMBER(" + cell + "),IF(AND(" + within + "),0,1)," + other(input, cell) + ")";
    };
  }

  /** What is no number is a fault, but for a cell that may be blank and is. */
  private static String other(InputTemplate input, String cell) {
    return input.use().optional() ? "IF(ISBLANK(" + cell + "),0,1)" : "1";
  }

  /** Between two spaces, so that no code is found across two others. */
  private static String isCurrency(String cell) {
    String codes = FormulaTranslation.text(" " + String.join(" ", Currencies.codes()) + " ");
    return "AND(LEN(" + cell + ")=3,ISNUMBER(FIND(\" \"&" + cell + "&\" \"," + codes + ")))";
  }

  private static String oneOf(InputTemplate input, String cell) {
    return input.choices().stream()
        .map(choice -> cell + "=" + FormulaTranslation.text(choice.word()))
        .collect(Collectors.joining(",", "OR(", ")"));
  }

  /**
   * The words {@code good} while the fault cell is 0, else what the formula {@code refusal} says.
   */
  String remark(Span fault, String good, String refusal) {
    return "IF(" + fault.reference() + "=0," + FormulaTranslation.text(good) + "," + refusal + ")";
  }
}
