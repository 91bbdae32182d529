package frillbook.brief;

import frillbook.naming.NamedRecords;
import java.util.Map;

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
    ClothSpec cloth,
    JoinSpec joins,
    BaseSpec base,
    double markingStep) {

  /** A brief from values by input name: numbers as {@code Double}, choices by their word. */
  public static Brief of(LengthUnit unit, Map<String, ?> inputs) {
    return NamedRecords.build(Brief.class, Map.of("unit", unit), inputs);
  }
}
