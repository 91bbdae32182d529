package frillbook.proofreading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The largest sets of names that all need one another: strong components of more than one name, or
 * of one that needs itself.
 *
 * <p>Found in one walk along all needs (R. Tarjan, Depth-first search and linear graph algorithms,
 * SIAM Journal on Computing 1, 1972).
 */
final class MutualNeeds {
  private static final int CLOSED = Integer.MAX_VALUE;

  /** A name on the way, and the first of the open names that can be come to from it. */
  private static final class Step {
    private final String name;
    private final int number;
    private final Iterator<Dependency> left;
    private int first;

    Step(String name, int number, Iterator<Dependency> left) {
      this.name = name;
      this.number = number;
      this.left = left;
      this.first = number;
    }

    void comesTo(int other) {
      first = Math.min(first, other);
    }
  }

  private final Map<String, List<Dependency>> needsOf;

  /** In which order names were come to, or that all of their component is known. */
  private final Map<String, Integer> numbers = new HashMap<>();

  /** Names whose component is not known yet, the last one come to first. */
  private final Deque<String> open = new ArrayDeque<>();

  private final Map<String, Set<String>> rings = new HashMap<>();

  private MutualNeeds(Map<String, List<Dependency>> needsOf) {
    this.needsOf = needsOf;
  }

  /** All that need one another, by each of their names; nothing where needs go one way only. */
  static Map<String, Set<String>> of(Map<String, List<Dependency>> needsOf) {
    MutualNeeds found = new MutualNeeds(needsOf);
    needsOf.keySet().stream().filter(name -> !found.isKnown(name)).forEach(found::walk);
    return found.rings;
  }

  private boolean isKnown(String name) {
    return numbers.containsKey(name);
  }

  /** Along a chain of needs of any length, without calling itself. */
  private void walk(String name) {
    Deque<Step> way = new ArrayDeque<>(List.of(step(name)));
    while (!way.isEmpty()) {
      Step step = way.peek();
      if (step.left.hasNext()) {
        String to = step.left.next().to();
        if (isKnown(to)) {
          step.comesTo(numbers.get(to));
        } else {
          way.push(step(to));
        }
      } else {
        way.pop();
        if (step.first == step.number) {
          close(step.name);
        } else {
          way.peek().comesTo(step.first);
        }
      }
    }
  }

  private Step step(String name) {
    int number = numbers.size();
    numbers.put(name, number);
    open.push(name);
    return new Step(name, number, needsOf.getOrDefault(name, List.of()).iterator());
  }

  /** All that were come to from {@code name} on and are open need one another. */
  private void close(String name) {
    Set<String> component = new TreeSet<>();
    String last;
    do {
      last = open.pop();
      numbers.put(last, CLOSED);
      component.add(last);
    } while (!last.equals(name));
    if (component.size() > 1 || needsItself(name)) {
      component.forEach(each -> rings.put(each, component));
    }
  }

  private boolean needsItself(String name) {
    return needsOf.getOrDefault(name, List.of()).stream().anyMatch(need -> need.to().equals(name));
  }
}
