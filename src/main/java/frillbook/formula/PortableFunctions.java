package frillbook.formula;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** The functions that every spreadsheet program a workbook may meet has, with one meaning. */
public final class PortableFunctions {
  private static final SortedMap<String, FunctionShape> SHAPES = load();

  private PortableFunctions() {}

  /** In capital letters, sorted. */
  public static Set<String> names() {
    return SHAPES.keySet();
  }

  /** What a function takes and gives; empty for one that is not listed. */
  public static Optional<FunctionShape> shape(String name) {
    return Optional.ofNullable(SHAPES.get(name));
  }

  private static SortedMap<String, FunctionShape> load() {
    try (InputStream list = PortableFunctions.class.getResourceAsStream("portable-functions.txt")) {
      String text = new String(list.readAllBytes(), StandardCharsets.UTF_8);
      SortedMap<String, FunctionShape> shapes = new TreeMap<>();
      text.lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(FunctionShape::of)
          .forEach(shape -> shapes.put(shape.name(), shape));
      return Collections.unmodifiableSortedMap(shapes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
