package frillbook.brief;

/**
 * How the cushion is filled.
 *
 * @param fillFraction of the volume the two discs can hold at most, above 0 to 1
 * @param fillDensity of the filling in the cushion, in grams for a litre; polyester fibre 12 to 20
 *     soft, to 40 firm (from memory, no source)
 * @param fillBagWeight grams in a bag as sold
 * @param padExtra by how much a ready pad is chosen larger than the cover
 * @param padStep ready pads are sold in sizes this far apart
 */
public record FillSpec(
    double fillFraction,
    double fillDensity,
    double fillBagWeight,
    double padExtra,
    double padStep) {}
