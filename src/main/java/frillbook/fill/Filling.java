package frillbook.fill;

import frillbook.brief.Brief;
import frillbook.brief.FillSpec;
import frillbook.brief.FillSpec.Sort;
import frillbook.measure.Outline;
import frillbook.measure.Rounding;

/**
 * What goes into the cushions and what it does to their size. Per cushion unless said otherwise;
 * lengths in the unit of the brief.
 *
 * @param limitVolume in litres, filled to the limit: flat 45 cm, 13.9 L
 * @param fillEach in grams
 * @param fillWeight in grams, for all cushions
 * @param padSize across, of a ready pad or foam disc that is sold: of a pad the flat size and the
 *     extra, of a disc what is left of the flat size when the cover goes up its edge; 0 for fibre
 */
public record Filling(
    FilledShape shape,
    Parcel parcel,
    double limitVolume,
    double fillEach,
    double fillWeight,
    double padSize) {

  public static Filling of(Brief brief) {
    FillSpec spec = brief.fill();
    FilledShape shape = FilledShape.of(brief);
    double litres = litres(brief, brief.cushion().diameter());
    double pad = padSize(brief, shape);
    double each = spec.density() * filled(brief, litres, pad);
    double weight = each * brief.cushion().quantity();
    return new Filling(shape, Parcel.of(brief, shape), litres, each, weight, pad);
  }

  /** Bags for the whole order, in fractions of one too; or pads or discs. */
  public double bought(Brief brief) {
    boolean loose = brief.fill().filling() == Sort.LOOSE_FIBRE;
    return loose ? fillWeight / brief.fill().fillBagWeight() : brief.cushion().quantity();
  }

  /** What two discs {@code diameter} across hold at most. */
  private static double litres(Brief brief, double diameter) {
    return brief.unit().litres(MylarBalloon.volume(diameter / 2));
  }

  private static double padSize(Brief brief, FilledShape shape) {
    FillSpec spec = brief.fill();
    return switch (spec.filling()) {
      case LOOSE_FIBRE -> 0;
      case READY_PAD -> Rounding.upTo(spec.padStep(), brief.cushion().diameter() + spec.padExtra());
      case FOAM_DISC -> Rounding.upTo(spec.padStep(), shape.filledDiameter());
    };
  }

  /** Litres to be filled: the cover's, the pad's, or those of the foam. */
  private static double filled(Brief brief, double cover, double pad) {
    return switch (brief.fill().filling()) {
      case LOOSE_FIBRE -> cover;
      case READY_PAD -> litres(brief, pad);
      case FOAM_DISC -> brief.unit().litres(Outline.area(pad) * brief.fill().foamThickness());
    };
  }
}
