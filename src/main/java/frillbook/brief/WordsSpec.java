package frillbook.brief;

/**
 * How the maker describes the three choices to a client; each may be empty.
 *
 * @param choiceOneWords the look of the brief itself
 * @param choiceTwoWords the look of the second choice
 * @param choiceThreeWords the look of the third
 */
public record WordsSpec(String choiceOneWords, String choiceTwoWords, String choiceThreeWords) {}
