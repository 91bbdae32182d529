package frillbook.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the shortest bought length that is enough, a power of two at a time.
 *
 * <p>Starting from nothing, powers of two steps are added, from a large one down to 1; an addition
 * is kept only if the length is still not enough. What is kept in the end is one step short of the
 * answer. Ten rows search a thousand lengths. A step is one of the shop's, or several of them for
 * an order that so many rows would not reach otherwise.
 */
public final class Halving {
  private Halving() {}

  /** Tries a number of buy steps, knowing the largest number already found too small. */
  public interface Attempt<T extends Trial> {
    T at(int steps, int tooSmall);
  }

  public static <T extends Trial> List<T> search(SearchReach reach, Attempt<T> attempt) {
    List<T> rows = new ArrayList<>();
    int tooSmall = 0;
    for (int row = 1; row <= reach.searchRows(); row++) {
      T trial = attempt.at(tooSmall + added(reach, row), tooSmall);
      rows.add(trial);
      tooSmall = trial.kept();
    }
    return List.copyOf(rows);
  }

  private static int added(SearchReach reach, int row) {
    return reach.searchStep() * (1 << (reach.searchRows() - row));
  }

  /** The last length found enough, which is the shortest; empty if none was. */
  public static <T extends Trial> Optional<T> shortest(List<T> rows) {
    return rows.stream().filter(Trial::enough).reduce((earlier, later) -> later);
  }
}
