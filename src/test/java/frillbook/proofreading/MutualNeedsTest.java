package frillbook.proofreading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.source.Position;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class MutualNeedsTest {
  private static final int NAMES = 12;

  private static Dependency need(String from, String to) {
    return new Dependency(from, to, Dependency.Kind.CELL, new Position("all.yaml", 1, 1));
  }

  private static Map<String, Set<String>> rings(List<Dependency> needs) {
    return MutualNeeds.of(needs.stream().collect(Collectors.groupingBy(Dependency::from)));
  }

  @Test
  void whoNeedsTheOtherBackIsInTheSameRing() {
    List<Dependency> needs =
        List.of(need("a", "b"), need("b", "c"), need("c", "a"), need("c", "d"));
    Set<String> all = Set.of("a", "b", "c");
    assertEquals(Map.of("a", all, "b", all, "c", all), rings(needs));
  }

  @Test
  void whatNeedsItselfIsARingAndWhatDoesNotIsNone() {
    assertEquals(Map.of("a", Set.of("a")), rings(List.of(need("a", "a"), need("b", "a"))));
  }

  /** Names lie in one ring where each can be come to from the other, which is tried by walking. */
  @Test
  void ringsAreWhereNamesCanBeComeToBothWays() {
    Random random = new Random(20261127);
    int found = 0;
    for (int i = 0; i < 300; i++) {
      List<Dependency> needs = new ArrayList<>();
      int count = random.nextInt(2 * NAMES);
      for (int j = 0; j < count; j++) {
        needs.add(need("n" + random.nextInt(NAMES), "n" + random.nextInt(NAMES)));
      }
      Map<String, Set<String>> expected = walked(needs);
      assertEquals(expected, rings(needs), needs.toString());
      found += expected.size();
    }
    assertTrue(found > 500, found + " names in rings");
  }

  private static Map<String, Set<String>> walked(List<Dependency> needs) {
    Map<String, Set<String>> reached = new HashMap<>();
    IntStream.range(0, NAMES).forEach(i -> reached.put("n" + i, new HashSet<>()));
    for (int round = 0; round <= NAMES; round++) {
      for (Dependency need : needs) {
        reached.get(need.from()).add(need.to());
        reached.get(need.from()).addAll(reached.get(need.to()));
      }
    }
    Map<String, Set<String>> rings = new HashMap<>();
    reached.forEach(
        (name, others) -> {
          if (others.contains(name)) {
            rings.put(
                name,
                others.stream()
                    .filter(other -> reached.get(other).contains(name))
                    .collect(Collectors.toCollection(TreeSet::new)));
          }
        });
    return rings;
  }

  /** As long as a sheet may have rows, and longer than a method may call itself. */
  @Test
  void aChainMayBeLong() {
    List<Dependency> chain =
        IntStream.range(0, 100_000).mapToObj(i -> need("n" + i, "n" + (i + 1))).toList();
    assertEquals(Map.of(), rings(chain));
  }
}
