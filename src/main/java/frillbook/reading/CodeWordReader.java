package frillbook.reading;

import frillbook.source.Position;
import frillbook.source.SourceText;
import frillbook.wording.CodeWord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/** Reads codes with the words that sheets show for them. */
public final class CodeWordReader {
  private static final String CODE = "[a-z][a-z0-9]*(_[a-z0-9]+)*";

  private final Block codes;

  /** Codes by all that may be typed for them, in small letters. */
  private final Map<String, String> meanings = new HashMap<>();

  private CodeWordReader(Block codes) {
    this.codes = codes;
  }

  /**
   * The codes under {@code key} in their order, each with {@code word} or with {@code {word, was}};
   * what cannot be one is told.
   */
  static List<CodeWord> read(Block block, String key) {
    return block.block(key).map(found -> new CodeWordReader(found).read()).orElse(List.of());
  }

  /** The names of {@code rows} with the words they give for {@code column}. */
  static List<CodeWord> ofRows(List<Block> rows, String column) {
    CodeWordReader reader = new CodeWordReader(rows.get(0));
    return rows.stream().map(row -> reader.ofRow(row, column)).toList();
  }

  private CodeWord ofRow(Block row, String column) {
    SourceText word = row.scope().said(row.requiredRawText(column));
    CodeWord read = new CodeWord(row.requiredRawText("row").value(), word.value());
    tellUnusable(read, word.position());
    return read;
  }

  private List<CodeWord> read() {
    List<CodeWord> words = new ArrayList<>();
    codes.keys().forEach(code -> words.add(read(code)));
    return words;
  }

  private CodeWord read(String code) {
    Optional<Block> more =
        codes.node(code).filter(MappingNode.class::isInstance).flatMap(node -> codes.block(code));
    SourceText word =
        codes
            .scope()
            .said(
                more.map(block -> block.requiredRawText("word"))
                    .orElseGet(() -> codes.requiredRawText(code)));
    List<String> was =
        more.filter(block -> block.has("was")).map(block -> block.texts("was")).stream()
            .flatMap(List::stream)
            .map(SourceText::value)
            .toList();
    more.ifPresent(Block::done);
    CodeWord read = new CodeWord(code, word.value(), was);
    tellUnusable(read, word.position());
    return read;
  }

  private void tellUnusable(CodeWord read, Position at) {
    if (!read.code().matches(CODE)) {
      tell(at, "the code " + read.code(), "words in small letters joined by _", "correct it");
    }
    Stream.concat(Stream.of(read.code()), read.words())
        .distinct()
        .filter(word -> isTaken(word, read.code()))
        .forEach(word -> tell(at, word + " for two codes", "each word for one", "rename one"));
  }

  private boolean isTaken(String word, String code) {
    String before = meanings.putIfAbsent(word.toLowerCase(Locale.ROOT), code);
    return before != null && !before.equals(code);
  }

  private void tell(Position at, String found, String expected, String remedy) {
    codes.scope().tell(at, found, expected, remedy);
  }
}
