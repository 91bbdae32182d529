package frillbook.calculation;

import frillbook.look.WorkbookSetting;
import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.reading.PackagedTemplates;
import frillbook.template.InputTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.workbook.WorkbookCompiler;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How many formula cells hang on each input of the first sheet and on the wage, and on which sheets
 * those of the wage lie.
 */
public final class ReachBenchmark {
  private static final String WAGE = "hourly_rate";

  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  private ReachBenchmark() {}

  public static void main(String[] args) {
    WorkbookValues values = new WorkbookValues(compiled());
    System.out.printf("%d formula cells%n%n", values.formulaCells().size());
    System.out.printf("%-16s %10s %8s%n", "input", "hang on it", "share");
    Stream<String> first =
        TEMPLATE.sheets().get(0).rows(InputTemplate.class).stream().map(InputTemplate::name);
    Stream.concat(first, Stream.of(WAGE)).forEach(input -> print(values, input));
    System.out.printf("%n%-24s %6s%n", "hang on " + WAGE, "cells");
    bySheet(values.hangingOn(WAGE))
        .forEach((sheet, cells) -> System.out.printf("%-24s %6d%n", sheet, cells));
  }

  private static void print(WorkbookValues values, String input) {
    int cells = values.hangingOn(input).size();
    double share = 100.0 * cells / values.formulaCells().size();
    System.out.printf(Locale.ROOT, "%-16s %10d %7.1f%%%n", input, cells, share);
  }

  private static Map<String, Long> bySheet(List<XSSFCell> cells) {
    return cells.stream()
        .map(cell -> cell.getSheet().getSheetName())
        .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
  }

  private static XSSFWorkbook compiled() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(workbook, TEMPLATE, new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
    return workbook;
  }
}
