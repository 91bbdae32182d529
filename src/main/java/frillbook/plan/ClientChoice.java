package frillbook.plan;

import frillbook.brief.WordsSpec;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One of the three choices as a client is shown it.
 *
 * @param clientChoice its number and the maker's words for it; "" for one that is left out
 * @param terms none where it cannot be made
 */
public record ClientChoice(String clientChoice, Optional<Terms> terms) {

  /**
   * @param clientFullness fabric in the frill over the line it is sewn to
   * @param clientRings turns of the frill
   * @param clientPriceEach tax included
   * @param clientPriceTotal tax included
   */
  public record Terms(
      double clientFullness, int clientRings, double clientPriceEach, double clientPriceTotal) {}

  static List<ClientChoice> all(List<ChoiceRow> rows, WordsSpec words) {
    List<String> said =
        List.of(words.choiceOneWords(), words.choiceTwoWords(), words.choiceThreeWords());
    return IntStream.range(0, rows.size()).mapToObj(i -> of(rows.get(i), said.get(i))).toList();
  }

  private static ClientChoice of(ChoiceRow row, String words) {
    String name =
        row.look().map(l -> row.choiceNo() + (words.isEmpty() ? "" : " – " + words)).orElse("");
    return new ClientChoice(name, row.figures().map(figures -> terms(row, figures)));
  }

  private static Terms terms(ChoiceRow row, ChoiceRow.Figures figures) {
    ChoiceRow.Asked asked = figures.asked().orElseThrow();
    return new Terms(
        row.look().orElseThrow().choiceFullness(),
        figures.choiceRings(),
        asked.choicePriceEach(),
        asked.choicePriceTotal());
  }
}
