package frillbook.source;

import java.util.Optional;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.parser.Parser;

/**
 * Stops where lists and keys lie too deep within each other; the library would follow them until
 * its stack ends.
 */
final class YamlDepth implements Parser {
  /** The built-in templates lie eleven deep. */
  static final int DEEPEST = 50;

  /** Where it begins to be too deep. */
  static final class TooDeep extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Optional<Mark> mark;

    private TooDeep(Optional<Mark> mark) {
      this.mark = mark;
    }

    Optional<Mark> mark() {
      return mark;
    }
  }

  private final Parser parser;
  private int depth;

  YamlDepth(Parser parser) {
    this.parser = parser;
  }

  @Override
  public boolean checkEvent(Event.ID choice) {
    return parser.checkEvent(choice);
  }

  @Override
  public Event peekEvent() {
    return parser.peekEvent();
  }

  @Override
  public boolean hasNext() {
    return parser.hasNext();
  }

  @Override
  public Event next() {
    Event event = parser.next();
    if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
      throw new TooDeep(event.getStartMark());
    } else if (event instanceof CollectionEndEvent) {
      depth--;
    }
    return event;
  }
}
