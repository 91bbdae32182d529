package frillbook.straight;

import frillbook.cutting.Trial;
import frillbook.measure.Rounding;
import frillbook.naming.Prefixed;

/**
 * One length of fabric tried for straight strips.
 *
 * @param tried in buy steps
 * @param run extent of the fabric along the strips, washed and its ends straightened
 * @param stack extent of the fabric across the strips
 * @param strip length of a full strip
 * @param rims discs at whose rims a strip ends, as many discs in a line as fit: two where two discs
 *     lie apart
 * @param inZigzag whether these lie in zigzag
 * @param abreast as many discs in a line as fit
 * @param stacked as few discs in a line as fit
 * @param kept the longest length known not to be enough, in buy steps
 */
public record StraightTrial(
    int tried,
    double run,
    double stack,
    double strip,
    int rims,
    boolean inZigzag,
    @Prefixed("abreast") Comb abreast,
    @Prefixed("stacked") Comb stacked,
    int kept)
    implements Trial {

  /** How the discs of the better way lie. */
  Spread spread() {
    if (isStacked()) {
      return Spread.LINES;
    }
    if (inZigzag) {
      return Spread.ZIGZAG;
    }
    return rims == Spread.APART.rims() ? Spread.APART : Spread.LINES;
  }

  Comb better() {
    return isStacked() ? stacked : abreast;
  }

  boolean isStacked() {
    return Rounding.settle(stacked.over() - abreast.over()) > 0;
  }
}
