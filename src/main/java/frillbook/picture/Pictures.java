package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.cutting.FrillLayouts;
import frillbook.cutting.GrainPlan;
import frillbook.discs.DiscSizes;
import frillbook.fill.Filling;
import frillbook.money.Costs;
import frillbook.money.Money;
import frillbook.money.Price;
import frillbook.rows.Rings;
import frillbook.rows.RowSizes;
import java.util.List;

/** The points all pictures of the plan are drawn from. */
public record Pictures(PictureSet set) {

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
    Money coins = Money.in(brief.money().currencyCode());
    List<MoneyShare> money =
        MoneyShare.all(coins, account.materials(), account.costs(), account.price());
    return new Pictures(
        new PictureSet(
            ripple,
            Flower.of(brief, cushion.sizes(), ringCount, ripple.rippleDepth()),
            Side.of(brief, cushion.filling()),
            ClothPicture.of(cloth),
            Guide.of(brief, cushion.sizes(), cushion.rings(), cushion.flatLength(), joins),
            money,
            MoneyShare.Largest.of(money),
            Leanings.of(brief, account.base()),
            BasePicture.of(base)));
  }
}
