package frillbook.materials;

/**
 * What the whole order takes of every material. Lengths are in the unit of the brief, before
 * washing.
 *
 * @param frillUsed cloth in the frills and overlays, as a length of the cloth's usable width
 * @param frillBought frill cloth bought
 * @param baseUsed base cloth that the rows of discs take
 * @param baseBought base cloth bought
 * @param interfacing length
 * @param zips how many
 * @param fillBags filling in bags, in fractions of one too
 * @param spools thread in spools, in fractions of one too
 */
public record MaterialNeeds(
    double frillUsed,
    double frillBought,
    double baseUsed,
    double baseBought,
    double interfacing,
    int zips,
    double fillBags,
    double spools) {}
