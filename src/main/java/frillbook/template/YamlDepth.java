package frillbook.template;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** How deep lists and keys lie within each other; the library follows them until its stack ends. */
final class YamlDepth {
  /** Three times as deep as rows repeated by {@code each} within each other may lie. */
  static final int DEEPEST = 50;

  private YamlDepth() {}

  /** Where {@code text} begins to lie too deep. */
  static Optional<Mark> tooDeep(String text, LoadSettings settings) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      if (event instanceof CollectionStartEvent) {
        depth++;
      } else if (event instanceof CollectionEndEvent) {
        depth--;
      }
      if (depth > DEEPEST) {
        return event.getStartMark();
      }
    }
    return Optional.empty();
  }
}
