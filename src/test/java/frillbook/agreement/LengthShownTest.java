package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Office;
import frillbook.measure.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Inches as programs print them, in lines, beside them, in inputs, tables and sentences: by hand.
 * 755.4 in are 6043.2 eighths, 3.182 in 50.9 sixteenths, 25/32 in and a hair 12.5 of them and more;
 * 453.6 g are 16 oz, 4 m are 4.37 yd.
 */
final class LengthShownTest {
  private static final String SHEET =
      """
      sheet: Tape
      title: Tape
      widths: [30, 20, 10, 20, 30]
      rows:
        - {input: wide, label: Wide, part: all, kind: length, inch: {default: 0.7, from: 0, to: 9}, cm: {default: 1, from: 0, to: 9}, prompt: P.}
        - {input: high, label: High, part: all, kind: length, inch: {default: 2.25, from: 0, to: 9}, cm: {default: 1, from: 0, to: 9}, prompt: P.}
        - {line: whole, label: Whole, unit: "{unit}", format: length, guard: none, formula: "45", note: N.}
        - {line: half, label: Half, unit: "{unit}", format: length, guard: none, formula: "49.5", note: N.}
        - {line: quarter, label: Quarter, unit: "{unit}", format: cut, guard: none, formula: "301.75", note: N.}
        - {line: eighth, label: Eighth, unit: "{unit}", format: length, guard: none, formula: "19.875", note: N.}
        - {line: between, label: Between, unit: "{unit}", format: long, also: true, guard: none, formula: "755.4", note: N.}
        - {line: short, label: Short, unit: "{unit}", format: length, guard: none, formula: "3.182", note: N.}
        - {line: tie, label: Tie, unit: "{unit}", format: length, guard: none, formula: "25/32*1.0000000001", note: N.}
        - {line: zero, label: Nothing, unit: "{unit}", format: length, guard: none, formula: "0", note: N.}
        - {line: heavy, label: Heavy, unit: g, format: count, also: true, guard: none, formula: "453.6", note: N.}
        - {line: thread, label: Thread, unit: m, format: count, also: true, guard: none, formula: "4", note: N.}
        - {sentence: "Said {eighth, tape} or {between, long_tape} of {heavy, weight}.", guard: none}
        - table: both
          rows: 2
          guard: none
          columns:
            - {column: size, label: Size, unit: "{unit}", format: length, note: N., formula: "{n}*10.25"}
            - {column: amount, label: Amount, unit: "-", format: number, note: N., formula: "{n}*2.4-1.65+({n}=2)*0.15"}
        - {said: true}
      """;

  private static final List<String> SHOWN =
      List.of(
          "Wide +7/10 +in .*",
          "High +2 +1/4 +in .*",
          "Whole +45 +in .*",
          "Half +49 1/2 +in .*",
          "Quarter +301 3/4 +in .*",
          "Eighth +19 7/8 +in .*",
          "Between +755 3/8 +in +20 yd 35 3/8 in .*",
          "Short +3 3/16 +in .*",
          "Tie +13/16 +in .*",
          "Nothing +0 +in .*",
          "Heavy +16.0 +oz +454 g .*",
          "Thread +4.4 +yd +4 ?m .*",
          "Said 19 7/8 or 20 yd 35 3/8 in of 1 lb\\.",
          " *10 1/4 +3/4 *",
          " *20 1/2 +3\\.3 *");

  @TempDir private Path folder;

  private static void shows(PrintedPages page) {
    List<String> lines = page.pages().get(0);
    for (String line : SHOWN) {
      assertTrue(lines.stream().anyMatch(each -> each.matches(line)), line + " in " + lines);
    }
  }

  @Test
  void libreOfficePrintsFractionsInLowestTerms() throws Exception {
    Office.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    Path pdf = folder.resolve("tape.pdf");
    Office office = new Office();
    office.open(OneSheet.written(folder, LengthUnit.INCH, SHEET)).print(pdf).close();
    office.run();
    shows(PrintedPages.of(pdf, folder));
  }

  @Test
  void gnumericPrintsFractionsInLowestTerms() throws Exception {
    Gnumeric.PROGRAM.requireOrSkip();
    PrintedPages.PDF_TO_TEXT.requireOrSkip();
    shows(PrintedPages.byGnumeric(OneSheet.written(folder, LengthUnit.INCH, SHEET), folder));
  }
}
