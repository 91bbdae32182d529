package frillbook.reading;

import static frillbook.reading.Written.line;
import static frillbook.reading.Written.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What is said of a formula that cannot be read, word for word. */
final class FormulaMistakesTest {
  @Test
  void anUnknownNameIsToldAtItsPlaceInTheFormula() {
    told(
        line("ring_count", "1") + line("ring_half", "2+ring_cont/2"),
        "a.yaml:17:16: the unknown name ring_cont;"
            + " expected the name of an input, line, check, column or block;"
            + " correct it or add what it names (did you mean ring_count?)");
  }

  @Test
  void theColumnIsRightWithinQuotationMarks() {
    told(
        line("ring_half", "\"IF(\\\"a\\\"=\\\"b\\\",1,nowhere)\""),
        "a.yaml:10:32: the unknown name nowhere;"
            + " expected the name of an input, line, check, column or block;"
            + " correct it or add what it names");
  }

  @Test
  void aFunctionThatNoSpreadsheetHasIsTold() {
    told(
        line("ring_half", "1+GATHER(1,2)"),
        "a.yaml:10:16: the function GATHER;"
            + " expected a function of the portable list, in capital letters;"
            + " use one that every spreadsheet has");
  }

  @Test
  void aFunctionOutsideTheListIsTold() {
    told(
        line("ring_half", "1+OFFSET(1,2)"),
        "a.yaml:10:16: the function OFFSET;"
            + " expected a function of the portable list, in capital letters;"
            + " use one that every spreadsheet has",
        "a.yaml:10:16: too few arguments to function OFFSET;"
            + " expected a formula that a spreadsheet can read;"
            + " check brackets, commas, operators and the function's arguments here");
  }

  @Test
  void aMissingBracketIsTold() {
    told(
        line("ring_half", "2*(1+3"),
        "a.yaml:10:19: a formula that does not parse near 3;"
            + " expected a formula that a spreadsheet can read;"
            + " check brackets, commas, operators and the function's arguments here");
  }

  @Test
  void tooFewArgumentsAreTold() {
    told(
        line("ring_half", "1+ROUND(3)"),
        "a.yaml:10:16: too few arguments to function ROUND;"
            + " expected a formula that a spreadsheet can read;"
            + " check brackets, commas, operators and the function's arguments here");
  }

  @Test
  void twoValuesWithoutAnOperatorAreTold() {
    told(
        line("ring_count", "1") + line("ring_half", "ring_count ring_count"),
        "a.yaml:17:25: no operator before ring_count;"
            + " expected a formula that a spreadsheet can read;"
            + " check brackets, commas, operators and the function's arguments here");
  }

  @Test
  void aStrayCharacterIsTold() {
    told(
        line("ring_half", "3$"),
        "a.yaml:10:15: the character $;"
            + " expected names, [columns], numbers, \"texts\", functions and operators;"
            + " take it out of the formula");
  }

  @Test
  void aSemicolonBetweenArgumentsIsTold() {
    told(
        line("ring_half", "MAX(3;4)"),
        "a.yaml:10:19: the character ;; expected a comma between arguments;"
            + " write a comma in its place");
  }

  @Test
  void curlyQuotationMarksAreToldOnceForEachText() {
    told(
        line("ring_half", "IF(1=1,“yes”,\"no\")").replace("number", "text"),
        "a.yaml:10:21: the quotation marks of “yes”; expected straight double ones;"
            + " write \"yes\"");
  }

  @Test
  void germanAndSingleQuotationMarksAreToldToo() {
    told(
        line("ring_half", "text", "„a“&'b'"),
        "a.yaml:10:14: the quotation marks of „a“; expected straight double ones; write \"a\"",
        "a.yaml:10:18: the quotation marks of 'b'; expected straight double ones; write \"b\"");
  }

  @Test
  void signsOfATypesetFormulaAreToldWithWhatToType() {
    told(
        line("ring_half", "2×3−1"),
        "a.yaml:10:15: the character ×;"
            + " expected names, [columns], numbers, \"texts\", functions and operators;"
            + " write * in its place",
        "a.yaml:10:17: the character −;"
            + " expected names, [columns], numbers, \"texts\", functions and operators;"
            + " write - in its place");
  }

  @Test
  void aSpaceThatIsNoneIsTold() {
    told(
        line("ring_half", "2\u00a0+3"),
        "a.yaml:10:15: a space that is not a plain one;"
            + " expected names, [columns], numbers, \"texts\", functions and operators;"
            + " type the space anew");
  }

  @Test
  void aDecimalCommaIsTold() {
    told(
        line("ring_half", "2,5*3"),
        "a.yaml:10:15: a comma outside the brackets of a function;"
            + " expected commas only between the arguments of a function;"
            + " write a decimal point: 2.5 and not 2,5");
  }

  @Test
  void aDecimalCommaWithinPlainBracketsIsTold() {
    told(
        line("ring_half", "ROUND((2,5)*3,0)"),
        "a.yaml:10:22: a comma outside the brackets of a function;"
            + " expected commas only between the arguments of a function;"
            + " write a decimal point: 2.5 and not 2,5");
  }

  @Test
  void aRangeOfCellsIsTold() {
    told(
        line("ring_count", "1") + line("ring_half", "SUM(ring_count:ring_count)"),
        "a.yaml:17:28: the : outside the brackets of a function;"
            + " expected one cell or one whole column; name the column or block");
  }

  @Test
  void aFunctionOfLaterSpreadsheetsIsToldWithTheOtherMistakes() {
    told(
        line("ring_half", "XLOOKUP(1,2,3)+nowhere"),
        "a.yaml:10:14: the function XLOOKUP;"
            + " expected a function of the portable list, in capital letters;"
            + " use one that every spreadsheet has",
        "a.yaml:10:29: the unknown name nowhere;"
            + " expected the name of an input, line, check, column or block;"
            + " correct it or add what it names");
  }

  @Test
  void threeThousandBracketsAreTold() {
    told(
        line("ring_half", "(".repeat(3000) + "1" + ")".repeat(3000)),
        "a.yaml:10:78: brackets or signs more than 64 deep;"
            + " expected a formula that every spreadsheet can follow;"
            + " give an inner part a line of its own and use its name");
  }

  @Test
  void threeThousandSignsAreTold() {
    told(
        line("ring_half", "-".repeat(3000) + "1"),
        "a.yaml:10:78: brackets or signs more than 64 deep;"
            + " expected a formula that every spreadsheet can follow;"
            + " give an inner part a line of its own and use its name");
  }

  @Test
  void asManyBracketsAsASpreadsheetFollowsAreRead() {
    Written.read(line("ring_half", "(".repeat(64) + "1" + ")".repeat(64)));
  }

  @Test
  void anEqualsSignInFrontIsTold() {
    String first = Written.mistakes(line("ring_half", "=3")).get(0);
    assertEquals(
        "a.yaml:10:14: a formula beginning with =; expected the formula alone;"
            + " leave out the = sign",
        first);
  }
}
