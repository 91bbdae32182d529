package frillbook.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the mistakes of one run, so that a person sees all of them and not only the first. */
public final class Mistakes {
  private final List<Mistake> found = new ArrayList<>();
  private final List<String> files = new ArrayList<>();

  public void add(Position at, String found, String expected, String remedy) {
    this.found.add(new Mistake(at.file(), at.line(), at.column(), found, expected, remedy));
  }

  /** Remembers the order of the files, which is the order their mistakes are told in. */
  public void opening(String file) {
    files.add(file);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /**
   * Every mistake once, in reading order. Rows that are repeated by {@code each} make the same
   * mistake several times; it is told once.
   */
  public List<Mistake> inReadingOrder() {
    Comparator<Mistake> byFile = Comparator.comparingInt(mistake -> files.indexOf(mistake.file()));
    return found.stream()
        .distinct()
        .sorted(byFile.thenComparing(Mistake::line).thenComparing(Mistake::column))
        .toList();
  }
}
