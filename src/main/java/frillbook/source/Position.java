package frillbook.source;

/**
 * A place in a template file.
 *
 * @param file name of the file within its source
 * @param line counted from 1
 * @param column in characters, counted from 1
 */
public record Position(String file, int line, int column) {
  /** The same line, {@code columns} further to the right. */
  Position right(int columns) {
    return new Position(file, line, column + columns);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
