package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.materials.Interfacing;
import frillbook.materials.MaterialNeeds;
import frillbook.rows.Rings;
import frillbook.strip.StripLength;
import frillbook.thread.Sewing;
import frillbook.time.Amounts;

/** The planned cushion, ready to be counted, timed and priced. */
record PlannedOrder(
    SizedBrief sized,
    Sizes sizes,
    Rings rings,
    StripLength strip,
    CutTotals cut,
    double frillUsedLength,
    Interfacing interfacing) {

  Brief brief() {
    return sized.brief();
  }

  int quantity() {
    return brief().cushion().quantity();
  }

  /** Metres in {@code length} of every cushion together. */
  double batchMetres(double length) {
    return brief().unit().metres(length * quantity());
  }

  /** Of the seams between widths of base fabric, as it is bought, washed and straightened. */
  private double widthSeam(BaseFabric base) {
    return sizes.baseWidth().seamLength(sized.baseFabric().usable(base.baseBuyLength()));
  }

  Sewing sewing(BaseFabric base) {
    return new Sewing(
        rings.stitchedLength(),
        strip.flatLength(),
        cut.joinCount(),
        sizes.strip().stripCutWidth(),
        sizes.discs().backCutDiameter(),
        widthSeam(base));
  }

  int zipCount() {
    return brief().base().backStyle().hasZip() ? quantity() : 0;
  }

  MaterialNeeds needs(BaseFabric base, double fillings, double threadLength) {
    double share = sizes.usableShare();
    return new MaterialNeeds(
        frillUsedLength / share,
        cut.buyLength(),
        base.baseUsedLength() / share,
        base.baseBuyLength(),
        interfacing.interfacingLength(),
        zipCount(),
        fillings,
        threadLength / brief().thread().reelLength());
  }

  Amounts amounts(BaseFabric base) {
    double flat = batchMetres(strip.flatLength());
    return new Amounts(
        cut.stripCount(),
        brief().unit().metres(widthSeam(base)),
        discCount(),
        interfacing.interfacingCount(),
        cut.joinCount(),
        brief().frill().edgeFinish().isSewn() ? flat : 0,
        flat,
        flat * brief().thread().gatheringRows(),
        brief().thread().pulledUp() ? flat : 0,
        rings.ringCount() * quantity(),
        batchMetres(rings.stitchedLength()),
        2 * brief().cushion().frills(rings.ringCount()) * quantity(),
        zipCount(),
        sizes.discs().backPieceCount(),
        batchMetres(sizes.rows().rimLength()),
        quantity());
  }

  private int discCount() {
    return quantity()
        + sizes.discs().backPieceCount()
        + sizes.discs().matchingDiscCount()
        + sizes.discs().baseMatchingCount()
        + interfacing.interfacingCount();
  }
}
