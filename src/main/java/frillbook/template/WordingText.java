package frillbook.template;

import frillbook.source.Position;
import frillbook.wording.Wording;
import java.util.Map;

/**
 * A sentence as written in a template.
 *
 * @param names every value it says or chooses by, and where it is written first
 */
public record WordingText(Wording wording, Position position, Map<String, Position> names) {
  public WordingText {
    names = Map.copyOf(names);
  }
}
