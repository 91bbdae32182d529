package frillbook.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the mistakes of one run, so that a person sees all of them and not only the first. */
public final class Mistakes {
  /** Whatever is beyond is counted only: a file of the wrong kind is full of them. */
  private static final int MOST = 10_000;

  private final Set<Mistake> found = new LinkedHashSet<>();
  private final List<String> files = new ArrayList<>();
  private int beyond;

  /**
   * Rows that are repeated by {@code each} make the same mistake several times; it is told once.
   */
  public void add(Position at, String found, String expected, String remedy) {
    Mistake mistake =
        new Mistake(
            at.file(),
            at.line(),
            at.column(),
            MessageText.of(found),
            MessageText.of(expected),
            MessageText.of(remedy));
    if (!isFull()) {
      this.found.add(mistake);
    } else if (!this.found.contains(mistake)) {
      beyond++;
    }
  }

  /** Whether further mistakes are counted only. */
  public boolean isFull() {
    return found.size() >= MOST;
  }

  /** Remembers the order of the files, which is the order their mistakes are told in. */
  public void opening(String file) {
    files.add(file);
  }

  /** Breaks off the reading when anything was wrong. */
  public void refuse() {
    if (!found.isEmpty()) {
      throw new TemplateException(inReadingOrder(), beyond);
    }
  }

  private List<Mistake> inReadingOrder() {
    Comparator<Mistake> byFile = Comparator.comparingInt(mistake -> files.indexOf(mistake.file()));
    return found.stream()
        .sorted(byFile.thenComparing(Mistake::line).thenComparing(Mistake::column))
        .toList();
  }
}
