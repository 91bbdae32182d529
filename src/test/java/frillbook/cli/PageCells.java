package frillbook.cli;

import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Finds cells of the client's page by what they say. */
final class PageCells {
  private PageCells() {}

  /** The first cell that says just that. */
  static XSSFCell saying(XSSFWorkbook page, String text) {
    return first(page, text::equals);
  }

  /** The first cell that says that among other words. */
  static XSSFCell mentioning(XSSFWorkbook page, String words) {
    return first(page, text -> text.contains(words));
  }

  private static XSSFCell first(XSSFWorkbook page, Predicate<String> text) {
    return all(page).filter(cell -> text.test(cell.toString())).findFirst().orElseThrow();
  }

  private static Stream<XSSFCell> all(XSSFWorkbook page) {
    XSSFSheet sheet = page.getSheetAt(0);
    return IntStream.rangeClosed(0, sheet.getLastRowNum())
        .mapToObj(sheet::getRow)
        .filter(Objects::nonNull)
        .flatMap(row -> IntStream.range(0, row.getLastCellNum()).mapToObj(row::getCell))
        .filter(Objects::nonNull);
  }
}
