package frillbook;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A part of a large sample, which is enough while one works, or all of it, where {@code
 * FRILLBOOK_EVERY_BRIEF=true} asks for it, as {@code .ci/run} does.
 */
public final class Sample {
  private static final String WHOLE = "FRILLBOOK_EVERY_BRIEF";

  private Sample() {}

  /** Whether samples are whole. */
  public static boolean isWhole() {
    return Boolean.parseBoolean(System.getenv(WHOLE)) || Boolean.getBoolean(WHOLE);
  }

  /** Every {@code everyNth} of them, from the first on; or all. */
  public static <T> List<T> of(List<T> all, int everyNth) {
    return isWhole() ? List.copyOf(all) : every(all, everyNth);
  }

  /** Every {@code everyNth} of them, from the first on. */
  public static <T> List<T> every(List<T> all, int everyNth) {
    return IntStream.range(0, all.size())
        .filter(index -> index % everyNth == 0)
        .<T>mapToObj(all::get)
        .toList();
  }

  /** {@code whole}, or the share of it that is tried while one works. */
  public static int size(int whole, int everyNth) {
    return isWhole() ? whole : (whole + everyNth - 1) / everyNth;
  }
}
