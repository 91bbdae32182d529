package frillbook.source;

/**
 * One thing that is wrong in a template.
 *
 * @param file name of the file within its source
 * @param line counted from 1
 * @param column in characters, counted from 1
 * @param found what stands there, as the start of a sentence
 * @param expected what should stand there, to be read after the word "expected"
 * @param remedy what to do about it
 */
public record Mistake(
    String file, int line, int column, String found, String expected, String remedy) {
  @Override
  public String toString() {
    return file
        + ":"
        + line
        + ":"
        + column
        + ": "
        + found
        + "; expected "
        + expected
        + "; "
        + remedy;
  }
}
