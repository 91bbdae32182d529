package frillbook.template;

import frillbook.source.Position;
import java.util.List;

/**
 * A name for several neighbouring columns of a table taken together.
 *
 * @param columns their names from left to right; at least one
 */
public record BlockTemplate(String name, List<String> columns, Position position) {
  public BlockTemplate {
    columns = List.copyOf(columns);
  }
}
