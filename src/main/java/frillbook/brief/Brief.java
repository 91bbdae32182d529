package frillbook.brief;

import frillbook.measure.LengthUnit;
import frillbook.naming.NamedRecords;
import java.util.Map;
import java.util.Set;

/**
 * Everything a maker decides, in one unit of length.
 *
 * <p>Ranges are not kept here: they stand with the inputs of the templates, where a person reads
 * them, and are checked before a brief is made. Shares are fractions: 4 % is 0.04.
 *
 * @param markingStep sizes that are marked and cut are rounded up to a whole number of these
 */
public record Brief(
    LengthUnit unit,
    CushionSpec cushion,
    FrillSpec frill,
    FabricSpec fabric,
    JoinSpec joins,
    BaseSpec base,
    double markingStep,
    MaterialSpec materials,
    FillSpec fill,
    ThreadSpec thread,
    TimeSpec times,
    MoneySpec money,
    ChoiceSpec choices,
    WordsSpec words) {

  /** A brief from values by input name: numbers as {@code Double}, choices by their code. */
  public static Brief of(LengthUnit unit, Map<String, ?> inputs) {
    return NamedRecords.build(Brief.class, Map.of("unit", unit), inputs);
  }

  /** Inputs that a brief can do without. */
  public static Set<String> optionalInputs() {
    return NamedRecords.optional(Brief.class);
  }

  /** Whether every cushion has a joined strip of its own, one of several. */
  public boolean ownStrips() {
    return joins.joinedBy() == JoinedBy.CUSHION && cushion.quantity() > 1;
  }

  /** How many joined strips there are: one for each cushion, or one. */
  public int joinedStrips() {
    return ownStrips() ? cushion.quantity() : 1;
  }

  /** What is joined over what is needed: above 1 for one strip that is cut apart for several. */
  public double joinedShare() {
    boolean cutApart = joins.joinedBy() == JoinedBy.ORDER && cushion.quantity() > 1;
    return cutApart ? 1 + joins.joinedMargin() : 1;
  }

  /**
   * Length of frill fabric that costs about as much as the work to cut and join a strip: 4 1/2
   * minutes at 15 an hour are 3/32 of a yard at 12. Wages themselves change no plan.
   */
  public double stripWorth() {
    return unit.unitsPerLong() * 3 / 32;
  }

  /** How the brief itself looks. */
  public LookSpec look() {
    return new LookSpec(frill.fullness(), cushion.ringSpacing());
  }

  /** The same brief with another look. */
  public Brief with(LookSpec look) {
    return new Brief(
        unit,
        cushion.withRingSpacing(look.spacing()),
        frill.withFullness(look.fullness()),
        fabric,
        joins,
        base,
        markingStep,
        materials,
        fill,
        thread,
        times,
        money,
        choices,
        words);
  }
}
