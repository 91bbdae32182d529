package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Finds values that need themselves.
 *
 * <p>Columns of one table may need each other in a ring as long as every way round goes through a
 * cell one row above: then each row is calculated from the rows over it. A ring that leaves the
 * table, or takes a whole column, is a circle nevertheless.
 */
public final class CircleCheck {
  private final List<Dependency> needs;
  private final Map<String, TableTemplate> tableOf = new HashMap<>();
  private final Map<String, List<Dependency>> needsOf;

  private CircleCheck(WorkbookTemplate template, List<Dependency> needs) {
    this.needs = needs;
    this.needsOf = needs.stream().collect(Collectors.groupingBy(Dependency::from));
    for (TableTemplate table : template.tables()) {
      table.columns().forEach(column -> tableOf.put(column.name(), table));
    }
  }

  static void check(WorkbookTemplate template, Declarations declarations, Mistakes mistakes) {
    CircleCheck check = new CircleCheck(template, Dependencies.of(template, declarations));
    for (Set<String> ring : check.rings()) {
      check.tell(ring, mistakes);
    }
  }

  /** In the order of the template. */
  private Set<Set<String>> rings() {
    Map<String, Set<String>> ringOf = MutualNeeds.of(needsOf);
    return needs.stream()
        .map(need -> ringOf.get(need.from()))
        .filter(Objects::nonNull)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private void tell(Set<String> ring, Mistakes mistakes) {
    List<Dependency> inside =
        needs.stream()
            .filter(need -> ring.contains(need.from()) && ring.contains(need.to()))
            .toList();
    boolean oneTable = ring.stream().map(tableOf::get).distinct().count() == 1;
    boolean rowByRow =
        oneTable
            && tableOf.containsKey(ring.iterator().next())
            && inside.stream().noneMatch(need -> need.kind() == Dependency.Kind.WHOLE);
    Predicate<Dependency> counts = need -> !rowByRow || need.kind() != Dependency.Kind.ABOVE;
    firstCircle(inside.stream().filter(counts).toList(), mistakes);
  }

  /** Tells one circle, the first in the order of the template; there may be none. */
  private void firstCircle(List<Dependency> inside, Mistakes mistakes) {
    for (Dependency need : inside) {
      List<String> way = way(need.to(), need.from(), inside);
      if (!way.isEmpty()) {
        mistakes.add(
            need.at(),
            "a circle: " + need.from() + " needs " + String.join(" needs ", way),
            "values that do not need themselves",
            "break the circle");
        return;
      }
    }
  }

  /** The names on a shortest way, both ends included; empty where there is no way. */
  private static List<String> way(String from, String to, List<Dependency> needs) {
    Deque<List<String>> open = new ArrayDeque<>(List.of(List.of(from)));
    Set<String> seen = new HashSet<>(Set.of(from));
    while (!open.isEmpty()) {
      List<String> way = open.poll();
      String last = way.get(way.size() - 1);
      if (last.equals(to)) {
        return way;
      }
      for (Dependency need : needs) {
        if (need.from().equals(last) && seen.add(need.to())) {
          List<String> longer = new ArrayList<>(way);
          longer.add(need.to());
          open.add(longer);
        }
      }
    }
    return List.of();
  }
}
