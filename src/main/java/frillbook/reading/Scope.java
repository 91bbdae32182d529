package frillbook.reading;

import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceFile;
import frillbook.source.SourceText;
import java.util.HashMap;
import java.util.Map;

/**
 * What a row is read in: its file, the variables of the {@code each} around it, and where mistakes
 * go.
 *
 * @param texts what is said in place of those of the file
 * @param extent counts what {@code each} repeats in the whole workbook
 * @param depth how many {@code each} lie around it
 */
public record Scope(
    SourceFile file,
    Map<String, String> variables,
    Catalogue texts,
    Mistakes mistakes,
    Extent extent,
    int depth) {
  public Scope {
    variables = Map.copyOf(variables);
  }

  Scope with(Map<String, String> more) {
    Map<String, String> all = new HashMap<>(variables);
    all.putAll(more);
    return new Scope(file, all, texts, mistakes, extent, depth + 1);
  }

  /** What a person reads in place of {@code text}. */
  SourceText said(SourceText text) {
    return texts.twin(text, mistakes);
  }

  void tell(Position at, String found, String expected, String remedy) {
    mistakes.add(at, found, expected, remedy);
  }
}
