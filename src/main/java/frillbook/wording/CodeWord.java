package frillbook.wording;

import java.util.List;
import java.util.stream.Stream;

/**
 * A code and the word by which a sheet shows it.
 *
 * @param code by which a plan knows it, in snake case
 * @param was words that it had before and that are still taken for it
 */
public record CodeWord(String code, String word, List<String> was) {
  public CodeWord {
    was = List.copyOf(was);
  }

  /** A code whose word has always been this. */
  public CodeWord(String code, String word) {
    this(code, word, List.of());
  }

  /** The word, and those it had before. */
  public Stream<String> words() {
    return Stream.concat(Stream.of(word), was.stream());
  }
}
