package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.discs.DiscSizes;
import frillbook.fill.Filling;
import frillbook.money.Costs;
import frillbook.money.Price;
import frillbook.rows.Rings;
import frillbook.rows.RowSizes;
import java.util.List;

/**
 * The points all pictures of the plan are drawn from, and their titles.
 *
 * @param titles what each picture shows
 */
public record Pictures(PictureSet set, Titles titles) {

  /** The planned cushion. */
  public record Cushion(
      Brief brief, RowSizes sizes, Rings rings, double flatLength, Filling filling) {}

  /** Its frill cloth. */
  public record Cutting(
      FrillLayouts layouts,
      GrainPlan plan,
      DiscSizes discs,
      double width,
      double stripWidth,
      double lineStep) {}

  /** The money of the order. */
  public record Account(double materials, Costs costs, Price price, Leanings.Base base) {}

  /** {@code joins} are those in the first cushion. */
  public static Pictures of(
      Cushion cushion,
      Cutting cutting,
      CutBase base,
      List<Guide.GuideJoin> joins,
      Account account) {
    Brief brief = cushion.brief();
    int ringCount = cushion.rings().ringCount();
    CutCloth cloth =
        new CutCloth(
            brief,
            cutting.layouts(),
            cutting.plan(),
            cutting.discs(),
            cutting.width(),
            cutting.stripWidth(),
            cutting.lineStep());
    Ripple ripple = Ripple.of(brief.frill().fullness());
    var set =
        new PictureSet(
            ripple,
            Flower.of(brief, cushion.sizes(), ringCount, ripple.rippleDepth()),
            Side.of(brief, cushion.filling()),
            ClothPicture.of(cloth),
            Guide.of(brief, cushion.sizes(), cushion.rings(), cushion.flatLength(), joins),
            MoneyShare.all(account.materials(), account.costs(), account.price()),
            Leanings.of(brief, account.base()),
            BasePicture.of(base));
    return new Pictures(set, Titles.of(brief, cushion.filling(), set, ringCount, cloth, base));
  }
}
