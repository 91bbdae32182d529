package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.discs.BaseCloth;
import frillbook.discs.BasePlaces;
import frillbook.picture.BasePicture;
import frillbook.picture.CutBase;

/**
 * Bases and backs on a cloth that is wide enough for them.
 *
 * @param baseClothOrder what to ask for, in yards or metres
 */
public record BaseWork(BaseCloth base, double baseClothOrder, BasePicture picture) {

  static BaseWork of(SizedBrief sized, Sizes sizes) {
    Brief brief = sized.brief();
    BaseCloth base = BaseCloth.of(brief, sized.discs(), sized.baseCloth());
    CutBase cut =
        new CutBase(
            new BasePlaces(brief.cushion().quantity(), sizes.discs(), base),
            base.baseBuyLength() * sizes.usableShare(),
            sizes.baseUsableWidth());
    return new BaseWork(
        base, base.baseBuyLength() / brief.unit().unitsPerLong(), BasePicture.of(cut));
  }
}
