package frillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Text in columns, numbers to the right, two spaces apart. */
final class TextTable {
  private final List<List<String>> rows = new ArrayList<>();

  TextTable(String... heads) {
    rows.add(List.of(heads));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  void row(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  String text() {
    int[] widths = IntStream.range(0, rows.get(0).size()).map(this::width).toArray();
    return rows.stream()
        .map(row -> line(row, widths).stripTrailing() + System.lineSeparator())
        .collect(Collectors.joining());
  }

  private int width(int column) {
    return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
  }

  private static String line(List<String> row, int[] widths) {
    return IntStream.range(0, row.size())
        .mapToObj(i -> padded(row.get(i), widths[i]))
        .collect(Collectors.joining("  "));
  }

  private static String padded(String cell, int width) {
    String blank = " ".repeat(width - cell.length());
    return isNumber(cell) ? blank + cell : cell + blank;
  }

  private static boolean isNumber(String cell) {
    return cell.matches("[0-9./ ]+");
  }
}
