package frillbook.reading;

import frillbook.source.SourceText;
import frillbook.wording.CodeWord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads codes with the words that sheets show for them. */
public final class CodeWordReader {
  private static final String CODE = "[a-z][a-z0-9]*(_[a-z0-9]+)*";

  private CodeWordReader() {}

  /** The codes under {@code key} in their order; what cannot be one is told. */
  static List<CodeWord> read(Block block, String key) {
    Optional<Block> codes = block.block(key);
    List<CodeWord> words = new ArrayList<>();
    codes.ifPresent(found -> found.keys().forEach(code -> words.add(word(found, code))));
    codes.ifPresent(found -> tellTwice(found, words));
    return words;
  }

  /** The names of {@code rows} with the words they give for {@code column}. */
  static List<CodeWord> ofRows(List<Block> rows, String column) {
    List<CodeWord> words =
        rows.stream()
            .map(
                row ->
                    new CodeWord(
                        row.requiredRawText("row").value(), row.requiredRawText(column).value()))
            .toList();
    rows.stream().findFirst().ifPresent(first -> tellTwice(first, words));
    return words;
  }

  private static CodeWord word(Block codes, String code) {
    SourceText word = codes.requiredRawText(code);
    if (!code.matches(CODE)) {
      codes
          .scope()
          .tell(
              word.position(),
              "the code " + code,
              "words in small letters joined by _",
              "write code: word");
    }
    return new CodeWord(code, word.value());
  }

  private static void tellTwice(Block codes, List<CodeWord> words) {
    Set<String> seen = new HashSet<>();
    words.stream()
        .map(CodeWord::word)
        .filter(word -> !seen.add(word.toLowerCase(Locale.ROOT)))
        .forEach(
            word ->
                codes
                    .scope()
                    .tell(
                        codes.position(),
                        "the word " + word + " for two codes",
                        "a word for each code",
                        "rename one"));
  }
}
