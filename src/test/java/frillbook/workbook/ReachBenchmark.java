package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.InputTemplate;
import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How many formula cells hang on each input of the first sheet and on the wage, and on which sheets
 * those of the wage lie.
 */
public final class ReachBenchmark {
  private static final String WAGE = "hourly_rate";

  private static final WorkbookTemplate TEMPLATE = TemplateReader.read(TemplateSource.packaged());

  private ReachBenchmark() {}

  public static void main(String[] args) {
    FormulaReach reach = new FormulaReach(compiled());
    System.out.printf("%d formula cells%n%n", reach.formulas());
    System.out.printf("%-16s %10s %8s%n", "input", "hang on it", "share");
    Stream<String> first =
        TEMPLATE.sheets().get(0).rows(InputTemplate.class).stream().map(InputTemplate::name);
    Stream.concat(first, Stream.of(WAGE)).forEach(input -> print(reach, input));
    System.out.printf("%n%-24s %6s%n", "hang on " + WAGE, "cells");
    bySheet(reach.of(WAGE))
        .forEach((sheet, cells) -> System.out.printf("%-24s %6d%n", sheet, cells));
  }

  private static void print(FormulaReach reach, String input) {
    int cells = reach.of(input).size();
    double share = 100.0 * cells / reach.formulas();
    System.out.printf(Locale.ROOT, "%-16s %10d %7.1f%%%n", input, cells, share);
  }

  private static Map<String, Long> bySheet(Set<String> cells) {
    return cells.stream()
        .map(cell -> cell.substring(0, cell.indexOf('!')))
        .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
  }

  private static XSSFWorkbook compiled() {
    XSSFWorkbook workbook = new XSSFWorkbook();
    new WorkbookCompiler()
        .compileInto(workbook, TEMPLATE, new WorkbookSetting(LengthUnit.INCH, Map.of(), Paper.A4));
    return workbook;
  }
}
