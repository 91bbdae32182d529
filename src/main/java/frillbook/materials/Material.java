package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.brief.ChargeAs;
import frillbook.brief.ExtraSpec;
import frillbook.brief.FillSpec.Sort;
import frillbook.brief.MaterialSpec;
import frillbook.brief.PriceSpec;
import frillbook.measure.Rounding;
import frillbook.money.Money;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of the shopping list, for the whole order. Fabric is counted in yards or metres, filling
 * in bags, pads or discs, thread in reels.
 *
 * @param materialNeeded what goes into the cushions; 0 where none does
 * @param materialStep it is sold in whole numbers of these
 * @param materialBought the need rounded up to the step; for fabric, what the cutting plan buys
 * @param materialPrice for one
 * @param materialAsBought cost of what is bought
 * @param materialAsUsed cost of what is needed, never more than as bought
 * @param materialCharged the one or the other, in whole minor units of the currency
 * @param materialPlace how many lines so far are bought at all, so that a list may leave out others
 */
public record Material(
    MaterialName materialName,
    double materialNeeded,
    double materialStep,
    double materialBought,
    double materialPrice,
    double materialAsBought,
    double materialAsUsed,
    double materialCharged,
    int materialPlace) {
  /** Every material in the order a maker buys them. */
  static List<Material> all(Brief brief, MaterialNeeds needs) {
    MaterialSpec spec = brief.materials();
    PriceSpec price = spec.prices();
    Counter counter = new Counter(Money.in(brief.money().currencyCode()), spec.chargeAs());
    double yard = brief.unit().unitsPerLong();
    double step = brief.fabric().buyStep() / yard;
    return placed(
        counter.cut(
            MaterialName.FRILL_FABRIC,
            needs.frillUsed() / yard,
            step,
            needs.frillBought() / yard,
            price.frillFabric()),
        counter.cut(
            MaterialName.BASE_FABRIC,
            needs.baseUsed() / yard,
            step,
            needs.baseBought() / yard,
            price.baseFabric()),
        counter.sold(
            MaterialName.INTERFACING, needs.interfacing() / yard, step, price.interfacing()),
        counter.sold(MaterialName.ZIPS, needs.zips(), 1, price.zip()),
        counter.sold(MaterialName.FILLING, needs.fillings(), 1, filling(brief)),
        counter.sold(MaterialName.THREAD, needs.reels(), 1, price.thread()),
        counter.extra(MaterialName.EXTRA_ONE, spec.extraOne(), price.extraOne()),
        counter.extra(MaterialName.EXTRA_TWO, spec.extraTwo(), price.extraTwo()),
        counter.extra(MaterialName.EXTRA_THREE, spec.extraThree(), price.extraThree()));
  }

  private static List<Material> placed(Material... lines) {
    List<Material> placed = new ArrayList<>();
    int place = 0;
    for (Material line : lines) {
      place += line.materialBought > 0 ? 1 : 0;
      placed.add(line.at(place));
    }
    return List.copyOf(placed);
  }

  private Material at(int place) {
    return new Material(
        materialName,
        materialNeeded,
        materialStep,
        materialBought,
        materialPrice,
        materialAsBought,
        materialAsUsed,
        materialCharged,
        place);
  }

  /** Price of one bag, pad or disc. */
  private static double filling(Brief brief) {
    PriceSpec price = brief.materials().prices();
    return brief.fill().filling() == Sort.LOOSE_FIBRE ? price.fill() : price.pad();
  }

  /** Makes lines that are charged one way in one currency. */
  private record Counter(Money money, ChargeAs chargeAs) {

    Material cut(MaterialName name, double needed, double step, double bought, double price) {
      double asBought = bought * price;
      double asUsed = needed * price;
      double charged = money.round(chargeAs == ChargeAs.BOUGHT ? asBought : asUsed);
      return new Material(name, needed, step, bought, price, asBought, asUsed, charged, 0);
    }

    Material sold(MaterialName name, double needed, double step, double price) {
      return cut(name, needed, step, Rounding.upTo(step, needed), price);
    }

    Material extra(MaterialName name, ExtraSpec spec, double price) {
      return sold(name, spec.needed(), spec.step(), price);
    }
  }
}
