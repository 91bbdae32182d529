package frillbook.reading;

import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.source.Position;
import frillbook.source.SourceText;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * The texts of one template file in another language, by the texts of the template, like a
 * catalogue of gettext: {@code - {text: Fullness, says: Ampleur}}.
 */
public final class Catalogue {
  /** What stands before the name of a file of the catalogue where a mistake is told. */
  static final String FOLDER = "texts/";

  /** Leaves every text as the template has it. */
  static final Catalogue NONE = new Catalogue("", Map.of());

  private final String file;
  private final Map<String, SourceText> twins;
  private final Map<String, Position> unused = new LinkedHashMap<>();

  private Catalogue(String file, Map<String, SourceText> twins) {
    this.file = file;
    this.twins = twins;
    twins.forEach((text, twin) -> unused.put(text, twin.position()));
  }

  /**
   * Reads the entries of {@code file}.
   *
   * @param scope of that file
   */
  static Catalogue read(String file, List<Node> entries, Scope scope) {
    Map<String, SourceText> twins = new LinkedHashMap<>();
    for (Node node : entries) {
      Block entry = new Block(node, scope, "entry");
      SourceText text = entry.requiredRawText("text");
      SourceText says = entry.requiredRawText("says");
      entry.done();
      if (twins.put(text.value(), says) != null) {
        scope.tell(
            text.position(), "the text " + text + " twice", "each text once", "take one out");
      }
    }
    return new Catalogue(file, twins);
  }

  /** Whether texts stay as they are. */
  boolean isNone() {
    return file.isEmpty();
  }

  /** What is said in place of {@code text}; the text itself, and told, without a twin. */
  SourceText twin(SourceText text, Mistakes mistakes) {
    if (isNone() || !hasWords(text.value())) {
      return text;
    }
    SourceText twin = find(text, mistakes).orElse(text);
    tellOthers(names(text.value()), names(twin.value()), twin, mistakes);
    return twin;
  }

  /** The twin of {@code text}; empty, and told, where there is none. */
  Optional<SourceText> find(SourceText text, Mistakes mistakes) {
    SourceText twin = twins.get(text.value());
    unused.remove(text.value());
    if (twin == null) {
      mistakes.add(
          text.position(),
          "the text " + text + " without its twin",
          "an entry for it in " + file,
          "add - text: … and says: …" + Nearest.hint(text.value(), unused.keySet()));
    }
    return Optional.ofNullable(twin);
  }

  /** Tells of what a twin leaves out or says besides. */
  static void tellOthers(
      Set<String> names, Set<String> others, SourceText twin, Mistakes mistakes) {
    if (!names.equals(others)) {
      Set<String> lost = new TreeSet<>(names);
      lost.removeAll(others);
      Set<String> more = new TreeSet<>(others);
      more.removeAll(names);
      mistakes.add(
          twin.position(),
          "a twin"
              + (lost.isEmpty() ? "" : " without {" + String.join("}, {", lost) + "}")
              + (more.isEmpty() ? "" : " with {" + String.join("}, {", more) + "}"),
          "what its text says, and no more",
          "correct the names in braces");
    }
  }

  /** Tells of entries for texts that the template does not have. */
  void tellUnused(Mistakes mistakes) {
    unused.forEach(
        (text, at) ->
            mistakes.add(
                at,
                "a twin of " + text + ", which the template does not say",
                "texts of the template",
                "take it out or correct its text"));
  }

  /** What is filled in: the words in braces. */
  static Set<String> names(String text) {
    Set<String> names = new HashSet<>();
    Matcher placeholder = SourceText.PLACEHOLDER.matcher(text);
    while (placeholder.find()) {
      names.add(placeholder.group(1));
    }
    return names;
  }

  /** Whether there is a letter outside of braces; signs and numbers are the same everywhere. */
  static boolean hasWords(String text) {
    return SourceText.PLACEHOLDER
        .matcher(text)
        .replaceAll("")
        .chars()
        .anyMatch(Character::isLetter);
  }
}
