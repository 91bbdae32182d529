package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.discs.BasePlaces;
import frillbook.picture.BasePicture;
import frillbook.picture.CutBase;

/**
 * Bases and backs on a fabric that is wide enough for them.
 *
 * @param baseFabricOrder what to ask for, in yards or metres
 */
public record BaseWork(BaseFabric base, double baseFabricOrder, BasePicture picture) {

  static BaseWork of(SizedBrief sized, Sizes sizes) {
    Brief brief = sized.brief();
    BaseFabric base = BaseFabric.of(brief, sized.discs(), sized.baseFabric());
    CutBase cut =
        new CutBase(
            new BasePlaces(sizes.discs(), base),
            sized.baseFabric().usable(base.baseBuyLength()),
            sizes.baseUsableWidth());
    return new BaseWork(
        base, base.baseBuyLength() / brief.unit().unitsPerLong(), BasePicture.of(cut));
  }
}
