package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseFabric;
import frillbook.discs.BasePlaces;
import frillbook.discs.BaseWidth;
import frillbook.picture.BasePicture;
import frillbook.picture.CutBase;

/**
 * Bases and backs on their fabric.
 *
 * @param baseFabricOrder what to ask for, in yards or metres
 */
public record BaseWork(BaseFabric base, double baseFabricOrder, BasePicture picture) {

  static BaseWork of(SizedBrief sized, Sizes sizes) {
    Brief brief = sized.brief();
    BaseWidth width = sizes.baseWidth();
    BaseFabric base = BaseFabric.of(brief, sized.discs(), sized.baseFabric());
    CutBase cut =
        new CutBase(
            new BasePlaces(sizes.discs(), base),
            sized.baseFabric().usable(base.baseBuyLength()) / width.baseWidths(),
            width.baseUsableWidth());
    return new BaseWork(
        base, base.baseBuyLength() / brief.unit().unitsPerLong(), BasePicture.of(cut));
  }
}
