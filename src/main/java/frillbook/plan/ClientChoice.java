package frillbook.plan;

import frillbook.brief.LookSpec;
import frillbook.brief.WordsSpec;
import frillbook.measure.Rounding;
import frillbook.naming.Coded;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One of the three choices as a client is shown it.
 *
 * @param offer none where it is left out or cannot be made
 */
public record ClientChoice(Optional<Offer> offer) {

  /**
   * @param clientChoice its number and the maker's words for it
   * @param clientLook beside the first
   * @param clientFullness fabric in the frill over the line it is sewn to
   * @param clientRings turns of the frill
   * @param clientPriceEach tax included
   * @param clientPriceTotal tax included
   */
  public record Offer(
      String clientChoice,
      Beside clientLook,
      double clientFullness,
      int clientRings,
      double clientPriceEach,
      double clientPriceTotal) {}

  /** How a look differs from the plan's, in the order of the template's words. */
  public enum Beside implements Coded {
    FLATTER_CLOSER,
    FLATTER,
    FLATTER_WIDER,
    CLOSER,
    DRAWN,
    WIDER,
    FULLER_CLOSER,
    FULLER,
    FULLER_WIDER;

    static Beside of(LookSpec look, LookSpec plan) {
      int fuller = sign(look.fullness() - plan.fullness());
      int wider = sign(look.spacing() - plan.spacing());
      return values()[DRAWN.ordinal() + 3 * fuller + wider];
    }

    private static int sign(double difference) {
      return (int) Math.signum(Rounding.settle(difference));
    }
  }

  static List<ClientChoice> all(List<ChoiceRow> rows, WordsSpec words) {
    List<String> said =
        List.of(words.choiceOneWords(), words.choiceTwoWords(), words.choiceThreeWords());
    LookSpec plan = rows.get(0).look().orElseThrow().spec();
    return IntStream.range(0, rows.size())
        .mapToObj(i -> of(rows.get(i), said.get(i), plan))
        .toList();
  }

  private static ClientChoice of(ChoiceRow row, String words, LookSpec plan) {
    String name = row.choiceNo() + (words.isEmpty() ? "" : " – " + words);
    return new ClientChoice(row.figures().map(figures -> offer(row, figures, name, plan)));
  }

  private static Offer offer(ChoiceRow row, ChoiceRow.Figures figures, String name, LookSpec plan) {
    LookSpec look = row.look().orElseThrow().spec();
    ChoiceRow.Asked asked = figures.asked().orElseThrow();
    return new Offer(
        name,
        Beside.of(look, plan),
        look.fullness(),
        figures.choiceRings(),
        asked.choicePriceEach(),
        asked.choicePriceTotal());
  }
}
