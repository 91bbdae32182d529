package frillbook.formula;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The functions that every spreadsheet program a workbook may meet has, with one meaning. */
public final class PortableFunctions {
  private static final Set<String> NAMES = load();

  private PortableFunctions() {}

  /** In capital letters, sorted. */
  public static Set<String> names() {
    return NAMES;
  }

  private static Set<String> load() {
    try (InputStream list = PortableFunctions.class.getResourceAsStream("portable-functions.txt")) {
      String text = new String(list.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(String::strip)
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
