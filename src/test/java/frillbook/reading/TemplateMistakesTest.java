package frillbook.reading;

import static frillbook.reading.Written.line;
import static frillbook.reading.Written.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.source.TemplateException;
import frillbook.template.SheetTemplate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every message word for word, with the line and column a person finds the mistake at. */
final class TemplateMistakesTest {
  @Test
  void aMissingUnitIsTold() {
    told(
        line("ring_half", "3").replace("    unit: in\n", ""),
        "a.yaml:5:5: line ring_half without unit; expected the key unit; add unit: …");
  }

  @Test
  void anUnknownKeyIsToldWithTheNearestKnownOne() {
    List<String> mistakes =
        Written.mistakes(line("ring_half", "3").replace("    label: L\n", "    lable: L\n"));
    assertEquals(
        List.of(
            "a.yaml:5:5: line ring_half without label; expected the key label; add label: …",
            "a.yaml:6:5: the unknown key lable in line ring_half; expected one of line, label,"
                + " unit, format, formula, text, note, guard, also, headline; correct or remove it"
                + " (did you mean label?)"),
        mistakes);
  }

  @Test
  void aNameUsedTwiceIsToldWithItsFirstPlace() {
    told(
        line("ring_half", "3") + line("ring_half", "4"),
        "a.yaml:12:5: the name ring_half a second time; expected each name once;"
            + " rename one; the first is at a.yaml:5:5");
  }

  @Test
  void aNameThatExcelWouldRefuseIsTold() {
    told(
        line("row1", "3"),
        "a.yaml:5:11: the name row1, which is a cell reference in a spreadsheet;"
            + " expected words in small letters joined by _ that no spreadsheet reads otherwise;"
            + " choose another name");
  }

  @Test
  void aCircleIsToldOnce() {
    told(
        line("first_one", "second_one")
            + line("second_one", "1+third_one")
            + line("third_one", "first_one"),
        "a.yaml:10:14: a circle: first_one needs second_one needs third_one needs first_one;"
            + " expected values that do not need themselves; break the circle");
  }

  @Test
  void aLineNeedingItselfThroughItsGuardIsACircle() {
    told(
        line("plan_ok", "1").replace("guard: none", "guard: plan_ok"),
        "a.yaml:5:5: a circle: plan_ok needs plan_ok;"
            + " expected values that do not need themselves; break the circle");
  }

  @Test
  void anUnknownGuardIsTold() {
    told(
        line("ring_half", "3").replace("    guard: none\n", ""),
        "a.yaml:5:5: the guard plan_ok, which is not a line; expected the name of a line that is 1"
            + " or 0, or none; write guard: none or add the line");
  }

  @Test
  void aSheetNameThatExcelWouldRefuseIsTold() {
    assertEquals(
        List.of(
            "a.yaml:1:8: the sheet name Cut/join, which holds one of \\ / * ? : [ ];"
                + " expected a name that a spreadsheet takes; choose another name"),
        Written.mistakes(Written.sheet("sheet: Cut/join\ntitle: T\nwidths: [20]\nrows: []\n")));
  }

  @Test
  void yamlThatIsNoneIsTold() {
    assertEquals(
        List.of(
            "a.yaml:2:8: text that is not YAML (mapping values are not allowed here);"
                + " expected keys and values in YAML;"
                + " check indents, quotation marks and colons from here upwards"),
        Written.mistakes(Written.sheet("sheet: A\n  title: T\n")));
  }

  @Test
  void aSheetFileThatIsNotThereIsToldWhereItIsNamed() {
    assertEquals(
        List.of(
            "workbook.yaml:2:10: the file b.yaml, which was not found; expected a file of that name among the"
                + " templates; add the file or correct the name"),
        Written.mistakes(Written.files(Map.of("workbook.yaml", "title: T\nsheets: [b.yaml]\n"))));
  }

  @Test
  void aRowOfUnknownKindIsTold() {
    told(
        "  - remark: hello\n",
        "a.yaml:5:5: a row beginning with remark; expected a row beginning with section, note,"
            + " caution, sentence, input, line, flag, check, table, picture, each, input_checks, verdict,"
            + " new_page, said, quote, excerpt, cells, step, beside or glossary; put the key that says what the row is first");
  }

  @Test
  void aQuoteOfWhatIsNoLineIsTold() {
    told(
        line("ring_cost", "1") + "  - {quote: ring_cots, note: Of all.}\n",
        "a.yaml:12:13: the quoted ring_cots, which is not a line; expected the name of a line;"
            + " correct it (did you mean ring_cost?)");
  }

  @Test
  void aColumnThatTheTableHasNotIsTold() {
    told(
        "  - {excerpt: knots, columns: [knot]}\n",
        "a.yaml:5:32: the column knot, which the table knots has not; expected columns of a table;"
            + " correct the one or the other");
  }

  @Test
  void aCountOfTheRowsToShowThatTheTableHasNotIsTold() {
    told(
        """
          - table: knots
            rows: 2
            guard: none
            columns:
              - {column: knot, label: K, unit: "-", format: count, formula: "{n}", note: N.}
          - {excerpt: knots, columns: [knot], close_up: knto}
        """,
        "a.yaml:10:49: the column knto, which the table knots has not; expected columns of a table;"
            + " correct the one or the other (did you mean knot?)");
  }

  @Test
  void aColumnOfLengthsCannotCountTheRowsToShow() {
    told(
        """
          - table: knots
            rows: 2
            guard: none
            columns:
              - {column: knot, label: K, unit: cm, format: length, formula: "{n}", note: N.}
          - {excerpt: knots, columns: [knot], close_up: knot}
        """,
        "a.yaml:10:49: close_up: knot; expected a column of format count, which counts the rows to"
            + " show; name one, or leave close_up out to show all");
  }

  @Test
  void aColumnThatIsNoLetterIsTold() {
    told(
        "  - {beside: 6, rows: []}\n",
        "a.yaml:5:14: beside: 6; expected the letter of a column, A to Z;"
            + " write it as the sheet shows it");
  }

  @Test
  void aLinkToNoSheetIsTold() {
    assertEquals(
        List.of(
            "a.yaml:3:9: a link to the sheet B, which is not there; expected the name of a sheet;"
                + " correct it or leave it out"),
        Written.mistakes(
            Written.sheet(
                "sheet: Aa\ntitle: T\nlinks: [B]\nwidths: [9]\nrows:\n  - note: Hello.\n")));
  }

  /** Of the columns 9 and 7 wide, the first has room for one. */
  @Test
  void aLinkWithoutRoomIsTold() {
    assertEquals(
        List.of(
            "a.yaml:3:12: 2 links; expected at most 1, one in each column 8.0 wide or more;"
                + " leave some out, or make columns wider"),
        Written.mistakes(
            Written.files(
                Map.of(
                    "workbook.yaml",
                    "title: T\nsheets: [a.yaml, b.yaml]\n",
                    "a.yaml",
                    "sheet: A\ntitle: T\nlinks: [B, B]\nwidths: [9, 7]\nrows:\n  - note: Hello.\n",
                    "b.yaml",
                    "sheet: B\ntitle: T\nwidths: [9]\nrows:\n  - note: Hello.\n"))));
  }

  @Test
  void aPartOfAPageIsTold() {
    assertEquals(
        List.of(
            "a.yaml:3:8: pages: 1.5; expected a whole number from 1 to 100;"
                + " correct it, or leave it out for as many as it takes"),
        Written.mistakes(
            Written.sheet(
                "sheet: A\ntitle: T\npages: 1.5\nwidths: [9]\nrows:\n  - note: Hello.\n")));
  }

  @Test
  void anUnknownPlaceholderIsTold() {
    told(
        "  - note: measured in {unti}\n",
        "a.yaml:5:23: the unknown placeholder {unti};"
            + " expected {unit}, {long_unit} or a variable of each; correct or remove it");
  }

  @Test
  void aPlaceholderWithACapitalIsTold() {
    told(
        "  - note: in {Unit}\n",
        "a.yaml:5:14: the unknown placeholder {Unit};"
            + " expected {unit}, {long_unit} or a variable of each; correct or remove it");
  }

  @Test
  void aUnitOfMoneyWithoutACurrencyIsTold() {
    told(
        line("ring_cost", "1").replace("unit: in", "unit: \"{currency_code} a ring\""),
        "a.yaml:5:5: the unit {currency_code} a ring in a workbook without an input currency_code;"
            + " expected an input of that name, of kind currency; add it or write another unit");
  }

  @Test
  void moneyWithoutPlacesIsTold() {
    told(
        line("ring_cost", "1").replace("format: number", "format: money"),
        "a.yaml:5:5: format: money in a workbook without a line money_places;"
            + " expected a line of that name, the places of the currency;"
            + " add it or choose another format");
  }

  @Test
  void anUnknownPlaceholderInAUnitIsTold() {
    told(
        line("ring_cost", "1").replace("unit: in", "unit: \"{currency}\""),
        "a.yaml:7:12: the unknown placeholder {currency};"
            + " expected {unit}, {long_unit}, {currency_code} or a variable of each;"
            + " correct or remove it");
  }

  @Test
  void listsOfDifferentLengthInEachAreTold() {
    told(
        "  - each: {g: [a, b], h: [c]}\n    rows: []\n",
        "a.yaml:5:11: lists of different length in each; expected lists of one length;"
            + " give every variable as many items");
  }

  @Test
  void aMistakeInRepeatedRowsIsToldOnce() {
    told(
        "  - each: {g: [one, two]}\n    rows:\n      - note: \"{g} {unti}\"\n",
        "a.yaml:7:20: the unknown placeholder {unti};"
            + " expected {unit}, {long_unit} or a variable of each; correct or remove it");
  }

  @Test
  void checksApartFromEachOtherAreTold() {
    String check =
        "  - {check: fine_%s, label: L, level: stop, guard: none, formula: 1=1, message: M.}\n";
    told(
        check.formatted("a") + "  - note: between\n" + check.formatted("b"),
        "a.yaml:7:5: a check apart from the others;"
            + " expected all checks one below the other on one sheet; move it to the others");
  }

  @Test
  void aColumnWithoutAWidthIsReadWithTheUsualOne() {
    SheetTemplate sheet =
        TemplateReader.read(
                Written.sheet(
                    "sheet: A\ntitle: T\nwidths: [20, 10]\nrows:\n" + line("ring_half", "3")))
            .sheets()
            .get(0);
    assertEquals(List.of(20.0, 10.0, 12.0, 12.0, 12.0), sheet.widths());
  }

  @Test
  void allMistakesOfARunAreToldInReadingOrder() {
    TemplateException told =
        assertThrows(
            TemplateException.class,
            () ->
                TemplateReader.read(
                    Written.rows(
                        line("ring_half", "nowhere")
                            + line("other_half", "3").replace("    note: N.\n", "")
                            + "  - note: \"{unti}\"\n")));
    assertEquals(
        """
        a.yaml:10:14: the unknown name nowhere; expected the name of an input, line, check, column or block; correct it or add what it names
        a.yaml:12:5: line other_half without note; expected the key note; add note: …
        a.yaml:18:12: the unknown placeholder {unti}; expected {unit}, {long_unit} or a variable of each; correct or remove it""",
        told.getMessage());
  }
}
