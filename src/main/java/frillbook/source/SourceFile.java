package frillbook.source;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** One template file: its YAML nodes and where in the text each of them stands. */
public final class SourceFile {
  private final String name;
  private final int[] characters;

  public SourceFile(String name, String text) {
    this.name = name;
    this.characters = text.codePoints().toArray();
  }

  String name() {
    return name;
  }

  /** The file's root node; empty after a syntax mistake or for an empty file. */
  public Optional<Node> compose(Mistakes mistakes) {
    String text = new String(characters, 0, characters.length);
    LoadSettings settings = LoadSettings.builder().build();
    try {
      ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, text));
      Optional<Node> root = new Composer(settings, new YamlDepth(parser)).getSingleNode();
      if (root.isEmpty()) {
        mistakes.add(top(), "an empty file", "keys and values in YAML", "write the template here");
      }
      return root;
    } catch (YamlDepth.TooDeep e) {
      tellDepth(e.mark().map(this::position).orElse(top()), mistakes);
    } catch (MarkedYamlEngineException e) {
      Position at = e.getProblemMark().map(this::position).orElse(top());
      tellSyntax(mistakes, at, e.getProblem());
    } catch (YamlEngineException e) {
      tellSyntax(mistakes, top(), e.getMessage());
    }
    return Optional.empty();
  }

  private static void tellDepth(Position at, Mistakes mistakes) {
    mistakes.add(
        at,
        "lists and keys more than " + YamlDepth.DEEPEST + " deep",
        "keys, values and lists of a template",
        "check brackets and indents from here upwards");
  }

  private static void tellSyntax(Mistakes mistakes, Position at, String problem) {
    String oneLine = String.valueOf(problem).replaceAll("\\s+", " ");
    mistakes.add(
        at,
        "text that is not YAML (" + oneLine + ")",
        "keys and values in YAML",
        "check indents, quotation marks and colons from here upwards");
  }

  public Position position(Node node) {
    return node.getStartMark().map(this::position).orElse(top());
  }

  private Position position(Mark mark) {
    return new Position(name, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private Position top() {
    return new Position(name, 1, 1);
  }

  /** The scalar's text with the places of its characters, placeholders replaced. */
  public SourceText text(ScalarNode scalar, Map<String, String> placeholders) {
    Position start = position(scalar);
    return columns(scalar)
        .map(columns -> SourceText.of(scalar.getValue(), start, columns))
        .orElseGet(() -> SourceText.at(start, scalar.getValue()))
        .replace(placeholders);
  }

  /** Walks over the text as written and as meant, in step; empty where the two part company. */
  private Optional<int[]> columns(ScalarNode scalar) {
    int from = scalar.getStartMark().map(Mark::getIndex).orElse(0);
    int to = scalar.getEndMark().map(Mark::getIndex).orElse(0);
    ScalarStyle style = scalar.getScalarStyle();
    int written = style == ScalarStyle.PLAIN ? from : from + 1;
    String meant = scalar.getValue();
    int[] columns = new int[meant.length()];
    for (int i = 0; i < columns.length; i++, written++) {
      if (isEscape(style, written, meant.charAt(i))) {
        written++;
      }
      if (written >= to || characters[written] != meant.charAt(i)) {
        return Optional.empty();
      }
      columns[i] = written - from;
    }
    return Optional.of(columns);
  }

  private boolean isEscape(ScalarStyle style, int at, char meant) {
    int written = at < characters.length ? characters[at] : 0;
    return style == ScalarStyle.DOUBLE_QUOTED && written == '\\' && (meant == '"' || meant == '\\')
        || style == ScalarStyle.SINGLE_QUOTED && written == '\'' && meant == '\'';
  }
}
