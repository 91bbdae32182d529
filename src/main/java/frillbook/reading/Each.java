package frillbook.reading;

import frillbook.source.SourceText;
import frillbook.template.UnitText;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Repeats rows or columns once for every item of parallel lists. */
public final class Each {
  private static final Set<String> TAKEN =
      Set.of("n", "cm_per_unit", "long_unit", "units_per_long", UnitText.CURRENCY);

  private static final Pattern RANGE = Pattern.compile("(\\d{1,3})\\.\\.(\\d{1,3})");

  private static final int DEEPEST = 10;

  private Each() {}

  /**
   * Hands every node under {@code key} to {@code reader}, once for each item, with the variables of
   * that item in its scope.
   */
  static void expand(Block block, String key, BiConsumer<Node, Scope> reader) {
    block.call("each");
    Optional<Block> lists = block.block("each");
    List<Node> nodes = block.items(key);
    block.done();
    if (block.scope().depth() >= DEEPEST) {
      tellDepth(block);
      return;
    }
    for (Map<String, String> item : lists.map(Each::items).orElse(List.of())) {
      Scope scope = block.scope().with(item);
      for (Node node : nodes) {
        if (scope.extent().isExceeded()) {
          Extent.tell(block.position(), scope.mistakes());
          return;
        }
        reader.accept(node, scope);
      }
    }
  }

  private static void tellDepth(Block block) {
    block
        .scope()
        .tell(
            block.position(),
            "each within each, more than " + DEEPEST + " deep",
            "rows that do not repeat themselves",
            "take out the inner one");
  }

  /** The variables of the first item, of the second, and so on. */
  private static List<Map<String, String>> items(Block lists) {
    Map<String, List<SourceText>> values = new LinkedHashMap<>();
    lists.keys().forEach(variable -> values.put(variable, values(lists, variable)));
    tellTakenNames(lists);
    int shortest = values.values().stream().mapToInt(List::size).min().orElse(0);
    if (values.values().stream().anyMatch(list -> list.size() != shortest)) {
      lists
          .scope()
          .tell(
              lists.position(),
              "lists of different length in each",
              "lists of one length",
              "give every variable as many items");
    }
    return IntStream.range(0, shortest).mapToObj(i -> item(values, i)).toList();
  }

  /** A list, or the numbers from the first to the last: {@code 1..12}. */
  private static List<SourceText> values(Block lists, String variable) {
    Optional<SourceText> ends =
        lists
            .node(variable)
            .filter(ScalarNode.class::isInstance)
            .flatMap(n -> lists.rawText(variable));
    Matcher range = RANGE.matcher(ends.map(SourceText::value).orElse(""));
    if (!range.matches()) {
      return lists.texts(variable);
    }
    int first = Integer.parseInt(range.group(1));
    int last = Integer.parseInt(range.group(2));
    return IntStream.rangeClosed(first, last)
        .mapToObj(number -> SourceText.at(ends.get().position(), String.valueOf(number)))
        .toList();
  }

  private static void tellTakenNames(Block lists) {
    lists.keys().stream()
        .filter(TAKEN::contains)
        .forEach(
            variable ->
                lists
                    .scope()
                    .tell(
                        lists.position(),
                        "the variable " + variable + " in each",
                        "a variable other than " + String.join(", ", new TreeSet<>(TAKEN)),
                        "choose another word"));
  }

  private static Map<String, String> item(Map<String, List<SourceText>> values, int index) {
    Map<String, String> item = new HashMap<>();
    values.forEach((variable, texts) -> item.put(variable, texts.get(index).value()));
    return item;
  }
}
