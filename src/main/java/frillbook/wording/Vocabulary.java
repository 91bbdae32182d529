package frillbook.wording;

import java.util.Map;

/**
 * What templates say of a plan beside its numbers.
 *
 * @param texts lines that are sentences, by name; one may speak of those before it
 * @param columns of tables that are sentences, by name
 * @param words of what is known by a code
 * @param flags lines that are 1 while an input has a code, by name
 */
public record Vocabulary(
    Map<String, Sentence> texts,
    Map<String, RowWording> columns,
    CodeWords words,
    Map<String, CodeFlag> flags) {}
