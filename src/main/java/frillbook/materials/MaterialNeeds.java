package frillbook.materials;

/**
 * What the whole order takes of every material. Lengths are in the unit of the brief, before
 * washing.
 *
 * @param frillUsed fabric in the frills and matching discs, as a length of the fabric's usable
 *     width
 * @param frillBought frill fabric bought
 * @param baseUsed base fabric that the rows of discs take
 * @param baseBought base fabric bought
 * @param interfacing length
 * @param zips how many
 * @param fillings bags, in fractions of one too, pads or foam discs
 * @param reels thread in reels, in fractions of one too
 */
public record MaterialNeeds(
    double frillUsed,
    double frillBought,
    double baseUsed,
    double baseBought,
    double interfacing,
    int zips,
    double fillings,
    double reels) {}
