package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.brief.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.Range;
import frillbook.template.TableTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the real workbook shows while a cell cannot be used. */
final class RefusalTest {
  private static final int NOTE_COLUMN = 4;

  private final List<String> wrong = new ArrayList<>();

  static List<TrialBrief> unusable() {
    return Stream.of(Trials.INCH, Trials.CM)
        .map(units -> TrialBrief.preset(Trials.TEMPLATE, units))
        .flatMap(
            preset -> Trials.TEMPLATE.inputs().stream().flatMap(input -> unusable(preset, input)))
        .toList();
  }

  private static Stream<TrialBrief> unusable(TrialBrief preset, InputTemplate input) {
    return wrongValues(input, preset.unit())
        .map(value -> preset.with(input.name(), value).titled(input.name() + " is " + value));
  }

  private static Stream<Object> wrongValues(InputTemplate input, LengthUnit unit) {
    Range range = input.range(unit);
    if (input.kind() == InputKind.TEXT) {
      return Stream.of("x".repeat(InputTemplate.LONGEST_TEXT + 1));
    } else if (input.kind() == InputKind.CURRENCY) {
      return Stream.of(null, "usd", "XAU", "AED AFN", "ED ", 840.0);
    } else if (input.kind() == InputKind.CHOICE) {
      return Stream.of(null, "velvet", 1.0);
    } else if (input.kind() == InputKind.COUNT) {
      return Stream.of(null, "two", range.from() - 1, range.to() + 1, range.from() + 0.5);
    }
    double step = (range.to() - range.from()) / 1000;
    return Stream.of(null, "about 1", range.from() - step, range.to() + step);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("unusable")
  void theSentenceOfTheInputStandsInAllThreePlacesAndNothingElseIsShown(TrialBrief brief) {
    String name = brief.changes().keySet().iterator().next();
    SheetValues sheet = Trials.given(brief);
    List<InputTemplate> inputs = Trials.TEMPLATE.inputs();
    int row = inputs.stream().map(InputTemplate::name).toList().indexOf(name);
    String sentence = brief.unit().say(inputs.get(row).refusal(brief.unit()));
    List<XSSFCell> sentences = sheet.cells("check_sentence").subList(0, inputs.size());
    for (int i = 0; i < inputs.size(); i++) {
      expect(sheet, sentences.get(i), i == row ? sentence : "fine");
    }
    expect(sheet, beside(sheet, name, NOTE_COLUMN), sentence);
    expect(sheet, below(sheet, "check_flag"), sentence);
    nothingIsPlanned(sheet, brief);
  }

  @Test
  void emptyCellsEverywhereLeaveNoError() {
    TrialBrief brief = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    for (InputTemplate input : Trials.TEMPLATE.inputs()) {
      brief = brief.with(input.name(), null);
    }
    nothingIsPlanned(Trials.given(brief), brief);
  }

  private static XSSFCell beside(SheetValues sheet, String name, int column) {
    return sheet.cells(name).get(0).getRow().getCell(column);
  }

  /** The first cell of the row under a name's cell. */
  private static XSSFCell below(SheetValues sheet, String name) {
    XSSFCell cell = sheet.cells(name).get(0);
    return cell.getSheet().getRow(cell.getRowIndex() + 1).getCell(0);
  }

  private void expect(SheetValues sheet, XSSFCell cell, Object expected) {
    if (!expected.equals(sheet.value(cell))) {
      Object found = sheet.value(cell);
      wrong.add(SheetValues.where(cell) + " is " + found + ", not " + expected);
    }
  }

  private void nothingIsPlanned(SheetValues sheet, TrialBrief brief) {
    expect(sheet, sheet.cells("check_flag").get(0), "STOP");
    Trials.TEMPLATE.lines().stream()
        .filter(line -> line.guard().isPresent())
        .map(LineTemplate::name)
        .forEach(name -> blank(sheet, name));
    Trials.TEMPLATE.tables().stream()
        .filter(TableTemplate::mayBeBlank)
        .flatMap(table -> table.columns().stream())
        .forEach(column -> blank(sheet, column.name()));
    assertTrue(sheet.cells("stitched_length").size() == 1, "names are where they should be");
    wrong.addAll(Trials.errors(brief.unit()));
    assertEquals(List.of(), wrong, brief.toString());
  }

  private void blank(SheetValues sheet, String name) {
    sheet.cells(name).forEach(cell -> expect(sheet, cell, ""));
  }
}
