package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.LookSpec;
import frillbook.brief.WordsSpec;
import frillbook.brief.YesNo;
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
   * @param clientPriceEach tax included, but for a trade client
   * @param clientPriceTotal likewise
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

  static List<ClientChoice> all(List<ChoiceRow> rows, Brief brief) {
    WordsSpec words = brief.words();
    List<String> said =
        List.of(words.choiceOneWords(), words.choiceTwoWords(), words.choiceThreeWords());
    return IntStream.range(0, rows.size())
        .mapToObj(i -> of(rows.get(i), said.get(i), brief))
        .toList();
  }

  private static ClientChoice of(ChoiceRow row, String words, Brief brief) {
    String name = row.choiceNo() + (words.isEmpty() ? "" : " – " + words);
    return new ClientChoice(row.figures().map(figures -> offer(row, figures, name, brief)));
  }

  private static Offer offer(ChoiceRow row, ChoiceRow.Figures figures, String name, Brief brief) {
    LookSpec look = row.look().orElseThrow().spec();
    ChoiceRow.Asked asked = figures.asked().orElseThrow();
    boolean beforeTax = brief.money().tradeClient() == YesNo.YES;
    double net = asked.choiceNetEach();
    return new Offer(
        name,
        Beside.of(look, brief.look()),
        look.fullness(),
        figures.choiceRings(),
        beforeTax ? net : asked.choicePriceEach(),
        beforeTax ? net * brief.cushion().quantity() : asked.choicePriceTotal());
  }
}
