package frillbook.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word that a mistyped one was most likely meant to be. */
public final class Nearest {
  private Nearest() {}

  /**
   * The candidate that the fewest letters separate from {@code word}; empty where more than a third
   * of its letters would have to change. {@code lable} is near {@code label}.
   */
  public static Optional<String> to(String word, Collection<String> candidates) {
    int most = Math.max(1, word.length() / 3);
    return candidates.stream()
        .filter(candidate -> Math.abs(candidate.length() - word.length()) <= most)
        .filter(candidate -> distance(word, candidate) <= most)
        .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
  }

  /** The nearest candidate as the end of a remedy, or nothing. */
  public static String hint(String word, Collection<String> candidates) {
    return to(word, candidates).map(near -> " (did you mean " + near + "?)").orElse("");
  }

  /** Letters inserted, left out, replaced or swapped with their neighbour. */
  private static int distance(String left, String right) {
    int[][] cost = new int[left.length() + 1][right.length() + 1];
    for (int i = 0; i <= left.length(); i++) {
      for (int j = 0; j <= right.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, left, right, i, j);
      }
    }
    return cost[left.length()][right.length()];
  }

  private static int cheapest(int[][] cost, String left, String right, int i, int j) {
    int replaced = cost[i - 1][j - 1] + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1
            && j > 1
            && left.charAt(i - 1) == right.charAt(j - 2)
            && left.charAt(i - 2) == right.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
