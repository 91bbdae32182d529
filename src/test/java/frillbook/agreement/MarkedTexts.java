package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.reading.TemplateReader;
import frillbook.source.Mistake;
import frillbook.source.TemplateException;
import frillbook.source.TemplateSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * A language for tests: English in wide letters (U+FF21 and on), so that whatever is not taken from
 * the texts shows itself. Each text is as long as before.
 */
final class MarkedTexts {
  private static final String BEFORE = "the text ";
  private static final String AFTER = " without its twin";
  private static final String CUT = " … ";
  private static final String FILE = "an entry for it in texts/";

  private static final int WIDE = 'Ａ' - 'A';

  private final String text;
  private final StringBuilder marked = new StringBuilder();
  private int at;

  private MarkedTexts(String text) {
    this.text = text;
  }

  /** The files that a person who translates {@code templates} would write. */
  static TemplateSource of(TemplateSource templates) {
    Map<String, String> files = new LinkedHashMap<>();
    texts(templates).forEach((file, texts) -> files.put(file, yaml(texts)));
    return file -> Optional.ofNullable(files.get(file));
  }

  /** By file what the reader asks for where it is given nothing. */
  static Map<String, Set<String>> texts(TemplateSource templates) {
    TemplateException told =
        assertThrows(
            TemplateException.class,
            () -> TemplateReader.read(templates, file -> Optional.empty()));
    Map<String, Set<String>> texts = new LinkedHashMap<>();
    for (Mistake mistake : told.mistakes()) {
      String file = mistake.expected().substring(FILE.length());
      texts.computeIfAbsent(file, of -> new TreeSet<>()).add(missing(mistake, file, templates));
    }
    return texts;
  }

  private static String missing(Mistake told, String file, TemplateSource templates) {
    String found = told.found();
    if (!found.startsWith(BEFORE) || !found.endsWith(AFTER)) {
      throw new AssertionError("not about a text: " + told);
    }
    String text = found.substring(BEFORE.length(), found.length() - AFTER.length());
    int gap = text.indexOf(CUT);
    return gap < 0
        ? text
        : whole(text.substring(0, gap), text.substring(gap + CUT.length()), file, templates);
  }

  /** A message tells no more than the beginning and the end of a long text. */
  private static String whole(String from, String to, String file, TemplateSource templates) {
    List<String> found = new ArrayList<>();
    Parse parse = new Parse(LoadSettings.builder().build());
    for (Event event : parse.parseString(templates.text(file).orElseThrow())) {
      if (event instanceof ScalarEvent scalar
          && scalar.getValue().startsWith(from)
          && scalar.getValue().endsWith(to)) {
        found.add(scalar.getValue());
      }
    }
    assertEquals(1, found.size(), from);
    return found.get(0);
  }

  private static String yaml(Set<String> texts) {
    return texts.stream()
        .map(text -> "- text: " + quoted(text) + "\n  says: " + quoted(mark(text)) + "\n")
        .collect(Collectors.joining());
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
  }

  /** {@code text} in wide letters, but for what is filled in and how. */
  static String mark(String text) {
    MarkedTexts marker = new MarkedTexts(text);
    marker.words();
    return marker.marked.toString();
  }

  private static char wide(char letter) {
    boolean latin = letter >= 'A' && letter <= 'Z' || letter >= 'a' && letter <= 'z';
    return latin ? (char) (letter + WIDE) : letter;
  }

  /** Up to the end, or to the brace that closes them. */
  private void words() {
    while (at < text.length() && text.charAt(at) != '}') {
      if (text.charAt(at) == '{') {
        argument();
      } else {
        marked.append(wide(text.charAt(at++)));
      }
    }
  }

  /** {@code {name}}, {@code {name, number, 0.#}} or a choice with words within. */
  private void argument() {
    int comma = text.indexOf(',', at);
    int close = text.indexOf('}', at);
    boolean choice =
        comma > 0
            && comma < close
            && text.substring(comma + 1, close).strip().matches("(?s)(plural|select).*");
    if (!choice) {
      copyTo(close + 1);
      return;
    }
    copyTo(text.indexOf(',', comma + 1) + 1);
    while (text.charAt(at) != '}') {
      copyTo(text.indexOf('{', at) + 1);
      words();
      copyTo(at + 1);
      while (text.charAt(at) == ' ') {
        copyTo(at + 1);
      }
    }
    copyTo(at + 1);
  }

  private void copyTo(int end) {
    marked.append(text, at, end);
    at = end;
  }
}
