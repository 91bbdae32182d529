package frillbook.wording;

/**
 * A code and the word by which a sheet shows it.
 *
 * @param code by which a plan knows it, in snake case
 */
public record CodeWord(String code, String word) {}
