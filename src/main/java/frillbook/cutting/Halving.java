package frillbook.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the shortest bought length that is enough, a power of two at a time.
 *
 * <p>Starting from nothing, powers of two steps are added, from a large one down to 1; an addition
 * is kept only if the length is still not enough. What is kept in the end is one step short of the
 * answer. Ten rows search a thousand lengths.
 */
public final class Halving {
  /** The most rows a search may take. */
  public static final int MOST = 20;

  private Halving() {}

  /** Tries a number of steps, knowing the largest number already found too small. */
  public interface Attempt<T extends Trial> {
    T at(int steps, int tooSmall);
  }

  public static <T extends Trial> List<T> search(int rowCount, Attempt<T> attempt) {
    List<T> rows = new ArrayList<>();
    int tooSmall = 0;
    for (int row = 1; row <= rowCount; row++) {
      T trial = attempt.at(tooSmall + (1 << (rowCount - row)), tooSmall);
      rows.add(trial);
      tooSmall = trial.kept();
    }
    return List.copyOf(rows);
  }

  /** The last length found enough, which is the shortest; empty if none was. */
  public static <T extends Trial> Optional<T> shortest(List<T> rows) {
    return rows.stream().filter(Trial::enough).reduce((earlier, later) -> later);
  }
}
