package frillbook.reading;

import frillbook.measure.Customary;
import frillbook.source.Nearest;
import frillbook.source.Position;
import frillbook.source.SourceText;
import frillbook.template.UnitText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Keys and values of one mapping, asked for one by one.
 *
 * <p>Whatever is missing or of the wrong kind is told, and a stand-in is given back, so that
 * reading goes on to the next mistake. {@link #done()} tells of the keys nobody asked for.
 */
public final class Block {
  private static final Set<String> TEXT_PLACEHOLDERS = Set.of("unit", "long_unit");

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

  private static final Set<String> UNIT_PLACEHOLDERS =
      Set.of("unit", "long_unit", UnitText.CURRENCY);

  private final Scope scope;
  private final Position position;
  private final Map<String, Node> values = new LinkedHashMap<>();
  private final Map<String, Position> keys = new LinkedHashMap<>();
  private final Set<String> asked = new LinkedHashSet<>();
  private String subject;

  /** Reads {@code node} in {@code scope}; tells when it is no mapping. */
  Block(Node node, Scope scope, String subject) {
    this.scope = scope;
    this.position = scope.file().position(node);
    this.subject = subject;
    if (node instanceof MappingNode mapping) {
      mapping.getValue().forEach(this::take);
    } else {
      scope.tell(position, subject + " without keys", "keys with values", "write key: value");
    }
  }

  private void take(NodeTuple entry) {
    Position at = scope.file().position(entry.getKeyNode());
    String key = entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
    if (isDecimalPart(key, entry.getValueNode())) {
      scope.tell(at, "a comma before " + key, "a number", "write a decimal point: 2.5 and not 2,5");
    } else if (values.putIfAbsent(key, entry.getValueNode()) != null) {
      scope.tell(at, "the key " + key + " twice", "each key once", "take one of the two out");
    } else {
      keys.put(key, at);
    }
  }

  /** In {@code {from: 2,5}} the 5 is a key of its own, without a value. */
  private static boolean isDecimalPart(String key, Node value) {
    boolean blank = value instanceof ScalarNode scalar && scalar.getValue().isEmpty();
    return blank
        && !key.isEmpty()
        && key.chars().allMatch(letter -> letter >= '0' && letter <= '9');
  }

  Position position() {
    return position;
  }

  /** Where a value of it is written. */
  Position position(Node value) {
    return scope.file().position(value);
  }

  Scope scope() {
    return scope;
  }

  /** What the block is, for messages: {@code line ring_count}. */
  void call(String subject) {
    this.subject = subject;
  }

  /** The first key, which says what kind of row the block is. */
  String firstKey() {
    return keys.isEmpty() ? "" : keys.keySet().iterator().next();
  }

  Set<String> keys() {
    return keys.keySet();
  }

  /** Whether the key is there; it is not asked for by this. */
  boolean has(String key) {
    return values.containsKey(key);
  }

  /** The node of a key that may be absent. */
  Optional<Node> node(String key) {
    asked.add(key);
    return Optional.ofNullable(values.get(key));
  }

  /** A text that may be absent, as written. */
  Optional<SourceText> rawText(String key) {
    return node(key).flatMap(node -> scalar(key, node));
  }

  /** A text that must be there, as written. */
  SourceText requiredRawText(String key) {
    Optional<SourceText> text = rawText(key).filter(written -> !written.value().isBlank());
    if (text.isEmpty() && !isSeveralValues(key)) {
      tellMissing(key);
    }
    return text.orElseGet(() -> SourceText.at(position, ""));
  }

  private boolean isSeveralValues(String key) {
    return has(key) && !(values.get(key) instanceof ScalarNode);
  }

  /** A text to show that may be absent. */
  Optional<String> text(String key) {
    return rawText(key).map(text -> shown(text, TEXT_PLACEHOLDERS));
  }

  /** A text to show that must be there. */
  String requiredText(String key) {
    return shown(requiredRawText(key), TEXT_PLACEHOLDERS);
  }

  /** The same with placeholders of its own. */
  String requiredText(String key, Set<String> placeholders) {
    return shown(requiredRawText(key), placeholders);
  }

  /** A unit that may be absent. */
  Optional<String> unit() {
    return rawText("unit").map(this::shownUnit);
  }

  /** A unit that must be there. */
  String requiredUnit() {
    return shownUnit(requiredRawText("unit"));
  }

  /** The symbols of units that are converted are the same in every language. */
  private String shownUnit(SourceText text) {
    return Customary.of(text.value())
        .map(Customary::metric)
        .orElseGet(() -> shown(text, UNIT_PLACEHOLDERS));
  }

  private String shown(SourceText text, Set<String> placeholders) {
    Matcher placeholder = SourceText.PLACEHOLDER.matcher(text.value());
    while (placeholder.find()) {
      if (!placeholders.contains(placeholder.group(1))) {
        scope.tell(
            text.at(placeholder.start()),
            "the unknown placeholder " + placeholder.group(),
            expected(placeholders),
            "correct or remove it");
      }
    }
    return scope.said(text).value();
  }

  private static String expected(Set<String> placeholders) {
    if (!placeholders.containsAll(TEXT_PLACEHOLDERS)) {
      return placeholders.isEmpty() ? "none" : "{" + String.join("}, {", placeholders) + "}";
    }
    String currency =
        placeholders.contains(UnitText.CURRENCY) ? ", {" + UnitText.CURRENCY + "}" : "";
    return "{unit}, {long_unit}" + currency + " or a variable of each";
  }

  /** A number that must be there. */
  double number(String key) {
    SourceText text = requiredRawText(key);
    return text.isEmpty() ? 0 : number(text);
  }

  /** A whole number from 1 to {@code most}; told with {@code advice} where it is another, and 1. */
  int whole(String key, int most, String advice) {
    double number = number(key);
    boolean fits = number >= 1 && number <= most && number == Math.rint(number);
    if (!fits && node(key).isPresent()) {
      tellNumber(key, "a whole number from 1 to " + most, advice);
    }
    return fits ? (int) number : 1;
  }

  /** Tells of the number under {@code key}, which cannot be used. */
  void tellNumber(String key, String expected, String advice) {
    SourceText written = rawText(key).orElse(SourceText.at(position(), ""));
    scope.tell(written.position(), key + ": " + written, expected, advice);
  }

  private double number(SourceText text) {
    if (NUMBER.matcher(text.value()).matches()) {
      double number = Double.parseDouble(text.value());
      if (Double.isFinite(number)) {
        return number;
      }
    }
    scope.tell(text.position(), text.value(), "a number", "write digits with a decimal point");
    return 0;
  }

  List<Double> numbers(String key) {
    return texts(key).stream().map(this::number).toList();
  }

  /** {@code true} or {@code false}; false where the key is absent. */
  boolean flag(String key) {
    Optional<SourceText> text = rawText(key);
    text.filter(written -> !written.value().matches("true|false"))
        .ifPresent(
            written ->
                scope.tell(
                    written.position(), written.value(), "true or false", "write one of the two"));
    return text.map(written -> written.value().equals("true")).orElse(false);
  }

  /** One of an enum's constants in small letters; {@code standIn} where it is none of them. */
  <E extends Enum<E>> E word(String key, E standIn) {
    SourceText text = requiredRawText(key);
    E[] constants = standIn.getDeclaringClass().getEnumConstants();
    for (E constant : constants) {
      if (small(constant).equals(text.value())) {
        return constant;
      }
    }
    if (!text.isEmpty()) {
      String words = Arrays.stream(constants).map(Block::small).collect(Collectors.joining(", "));
      scope.tell(text.position(), key + ": " + text, "one of " + words, "choose one of them");
    }
    return standIn;
  }

  private static String small(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** The items of a list of texts; empty, and told, where the key is absent. */
  List<SourceText> texts(String key) {
    List<SourceText> texts = new ArrayList<>();
    items(key).forEach(item -> scalar(key, item).ifPresent(texts::add));
    return texts;
  }

  /** The items of a list; empty, and told, where the key is absent. */
  List<Node> items(String key) {
    Optional<Node> node = node(key);
    if (node.isEmpty()) {
      tellMissing(key);
      return List.of();
    }
    if (node.get() instanceof SequenceNode sequence) {
      return sequence.getValue();
    }
    tellWrongKind(node.get(), key + " without a list", "a list", "write [a, b] or lines with -");
    return List.of();
  }

  /** The keys and values under a key; empty, and told, where it is absent. */
  Optional<Block> block(String key) {
    Optional<Block> block = node(key).map(node -> new Block(node, scope, key + " of " + subject));
    if (block.isEmpty()) {
      tellMissing(key);
    }
    return block;
  }

  private Optional<SourceText> scalar(String key, Node node) {
    if (node instanceof ScalarNode scalar) {
      SourceText text = scope.file().text(scalar, scope.variables());
      return Optional.of(TextRules.usable(key, text, scope));
    }
    tellWrongKind(node, key + " with several values", "one value", "write it on one line");
    return Optional.empty();
  }

  private void tellWrongKind(Node node, String found, String expected, String remedy) {
    scope.tell(scope.file().position(node), found, expected, remedy);
  }

  private void tellMissing(String key) {
    scope.tell(position, subject + " without " + key, "the key " + key, "add " + key + ": …");
  }

  /** Tells of every key that was not asked for. */
  void done() {
    keys.forEach(
        (key, at) -> {
          if (!asked.contains(key)) {
            scope.tell(
                at,
                "the unknown key " + key + " in " + subject,
                "one of " + String.join(", ", asked),
                "correct or remove it" + Nearest.hint(key, asked));
          }
        });
  }
}
