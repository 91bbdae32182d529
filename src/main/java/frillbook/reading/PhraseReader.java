package frillbook.reading;

import frillbook.template.Phrase;
import frillbook.template.Phrases;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;

/** Reads what a workbook says of itself. */
public final class PhraseReader {
  private PhraseReader() {}

  static Phrases read(Block block) {
    Map<Phrase, String> texts = new EnumMap<>(Phrase.class);
    for (Phrase phrase : Phrase.values()) {
      texts.put(phrase, text(block, phrase));
    }
    block.done();
    return new Phrases(texts);
  }

  /** Some stand between quotation marks in formats of numbers, which know no way to write one. */
  private static String text(Block block, Phrase phrase) {
    String text = block.requiredText(phrase.key(), new LinkedHashSet<>(phrase.variables()));
    if (text.contains("\"")) {
      block
          .scope()
          .tell(
              block.position(),
              "a quotation mark in " + phrase.key(),
              "words without one",
              "take it out or write “ and ”");
    }
    return text;
  }
}
