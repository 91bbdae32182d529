package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.brief.LookSpec;
import frillbook.brief.YesNo;
import frillbook.measure.Rounding;
import frillbook.naming.Coded;
import java.util.Optional;

/**
 * Another choice as a client is shown it, beside the plan.
 *
 * @param look beside the plan's
 * @param offer none where it is left out or cannot be made
 */
public record ClientChoice(Beside look, Optional<Offer> offer) {

  /**
   * @param askedEach price of one, tax included but for a trade client
   * @param askedTotal likewise of all
   */
  public record Offer(double askedEach, double askedTotal) {}

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
    FULLER_WIDER,
    LEFT_OUT;

    static Beside of(LookSpec look, LookSpec plan) {
      int fuller = sign(look.fullness() - plan.fullness());
      int wider = sign(look.spacing() - plan.spacing());
      return values()[DRAWN.ordinal() + 3 * fuller + wider];
    }

    private static int sign(double difference) {
      return (int) Math.signum(Rounding.settle(difference));
    }
  }

  static ClientChoice of(ChoiceRow row, Brief brief) {
    Optional<ChoiceRow.Asked> asked = row.figures().flatMap(ChoiceRow.Figures::asked);
    Beside look =
        asked
            .map(of -> Beside.of(row.look().orElseThrow().spec(), brief.look()))
            .orElse(Beside.LEFT_OUT);
    return new ClientChoice(look, asked.map(of -> offer(of, brief)));
  }

  private static Offer offer(ChoiceRow.Asked asked, Brief brief) {
    double net = asked.choiceNetEach();
    return brief.money().tradeClient() == YesNo.YES
        ? new Offer(net, net * brief.cushion().quantity())
        : new Offer(asked.choicePriceEach(), asked.choicePriceTotal());
  }
}
