package frillbook.brief;

/**
 * What the maker pays, tax included, in the currency of the brief; 0 for what costs nothing.
 *
 * @param frillFabric for a yard or metre; likewise base fabric and interfacing
 * @param zip for one
 * @param fill for a bag of loose fibre
 * @param pad for a ready pad or a foam disc
 * @param thread for a reel
 * @param extraOne for one of whatever the first free line counts; likewise the others
 */
public record PriceSpec(
    double frillFabric,
    double baseFabric,
    double interfacing,
    double zip,
    double fill,
    double pad,
    double thread,
    double extraOne,
    double extraTwo,
    double extraThree) {}
