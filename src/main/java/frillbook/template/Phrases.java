package frillbook.template;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a workbook says of itself in one language.
 *
 * @param texts of all phrases, their variables in braces
 */
public record Phrases(Map<Phrase, String> texts) {
  /** The file they stand in, beside those of the sheets. */
  public static final String FILE = "phrases.yaml";

  private static final Pattern VARIABLE = Pattern.compile("\\{(\\w+)}");

  public Phrases {
    texts = Map.copyOf(texts);
  }

  /**
   * The phrase with what is filled in.
   *
   * @param values of its variables, in their order
   */
  public String say(Phrase phrase, String... values) {
    Matcher variable = VARIABLE.matcher(texts.get(phrase));
    return variable.replaceAll(
        found -> Matcher.quoteReplacement(values[phrase.variables().indexOf(found.group(1))]));
  }
}
