package frillbook.template;

import java.util.HashMap;
import java.util.Map;

/**
 * What a row is read in: its file, the variables of the {@code each} around it, and where mistakes
 * go.
 *
 * @param extent counts what {@code each} repeats in the whole workbook
 * @param depth how many {@code each} lie around it
 */
record Scope(
    SourceFile file, Map<String, String> variables, Mistakes mistakes, Extent extent, int depth) {
  Scope {
    variables = Map.copyOf(variables);
  }

  Scope with(Map<String, String> more) {
    Map<String, String> all = new HashMap<>(variables);
    all.putAll(more);
    return new Scope(file, all, mistakes, extent, depth + 1);
  }

  void tell(Position at, String found, String expected, String remedy) {
    mistakes.add(at, found, expected, remedy);
  }
}
