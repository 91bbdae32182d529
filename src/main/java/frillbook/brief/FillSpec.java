package frillbook.brief;

import frillbook.naming.Coded;

/**
 * How the cushion is filled. What only another filling takes is not looked at.
 *
 * @param filling what goes into it
 * @param fillFraction how far it is filled: the share of the volume the two discs can hold at most;
 *     settles the shape, and not what a foam disc does to it
 * @param fillFirmness of loose fibre, and of that in a pad
 * @param fillSoft grams for each litre that the cover can hold, where it is to be soft; likewise
 *     medium and firm
 * @param fillBagWeight grams in a bag as sold
 * @param padExtra by how much a ready pad is chosen larger than the cover
 * @param padStep pads and foam discs are sold in sizes this far apart
 * @param foamThickness as sold
 * @param foamDensity in grams for a litre, which are kilograms for a cubic metre
 * @param parcelDivisor volume for one unit of volumetric weight: 139 in³ a pound, 5000 cm³ a
 *     kilogram
 */
public record FillSpec(
    Sort filling,
    double fillFraction,
    Firmness fillFirmness,
    double fillSoft,
    double fillMedium,
    double fillFirm,
    double fillBagWeight,
    double padExtra,
    double padStep,
    double foamThickness,
    double foamDensity,
    double parcelDivisor) {

  /** What goes into a cushion. */
  public enum Sort implements Coded {
    LOOSE_FIBRE,
    READY_PAD,
    FOAM_DISC
  }

  /** How much fibre goes into it. */
  public enum Firmness implements Coded {
    SOFT,
    MEDIUM,
    FIRM
  }

  /** Grams for each litre that is to be filled. */
  public double density() {
    return filling == Sort.FOAM_DISC
        ? foamDensity
        : switch (fillFirmness) {
          case SOFT -> fillSoft;
          case MEDIUM -> fillMedium;
          case FIRM -> fillFirm;
        };
  }
}
