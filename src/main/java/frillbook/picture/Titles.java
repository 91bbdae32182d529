package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.fill.Filling;
import frillbook.measure.Rounding;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** What each picture shows, in a sentence with its number. */
public record Titles(
    String flowerTitle,
    String sideTitle,
    String clothTitle,
    String guideTitle,
    String moneyTitle,
    String fullerTitle,
    String closerTitle,
    String baseClothTitle) {

  static Titles of(
      Brief brief, Filling filling, PictureSet set, int ringCount, CutCloth cloth, CutBase base) {
    return new Titles(
        flower(brief, set, ringCount),
        side(brief, filling),
        cloth(brief, set.cloth(), cloth),
        guide(set.guide()),
        money(set.money()),
        "Half a time fuller: about "
            + percent(set.leanings().fullers().get(5).fullerCloth() - 1)
            + " % more cloth, about "
            + percent(set.leanings().fullers().get(5).fullerPrice() - 1)
            + " % on the price",
        "Rings a fifth closer: about "
            + percent(set.leanings().closers().get(1).closerCloth() - 1)
            + " % more cloth, about "
            + percent(set.leanings().closers().get(1).closerPrice() - 1)
            + " % on the price",
        baseCloth(brief, set.base(), base));
  }

  private static String flower(Brief brief, PictureSet set, int ringCount) {
    String deep = number(2 * set.ripple().rippleDepth(), 2);
    FlowerShape flower = set.flower().shape();
    return counted(ringCount, "ring")
        + ", "
        + number(brief.frill().fullness(), 2)
        + " times full: "
        + (!deep.equals("0") ? "ripples about " + deep + " times as deep as long" : "no ripples")
        + (flower.flowerThinned()
            ? "; " + counted((int) flower.flowerTurns(), "ring") + " drawn"
            : "");
  }

  private static String side(Brief brief, Filling filling) {
    String unit = " " + brief.unit().symbol();
    return "Filled to "
        + percent(brief.fill().fillFraction())
        + " %: about "
        + number(filling.stuffedDiameter(), 1)
        + unit
        + " across and "
        + number(filling.stuffedThickness(), 1)
        + unit
        + " thick, under a frill "
        + number(brief.frill().frillHeight(), 1)
        + unit
        + " high";
  }

  private static String cloth(Brief brief, ClothPicture picture, CutCloth cloth) {
    int discs = cloth.discs().overlayCount();
    String grain =
        switch (cloth.grain()) {
          case ACROSS -> "across the cloth";
          case ALONG -> "along the cloth";
          case BIAS -> "on the bias";
        };
    return counted(cloth.cut().count(), "strip")
        + " "
        + grain
        + (discs > 0 ? " and " + counted(discs, "overlay") : "")
        + sizes(
            size(cloth.plan().buyLength(), brief.cloth().fabricWidth(), brief),
            size(picture.clothLength(), cloth.width(), brief))
        + (picture.cutLines().clothEvery() > 1
            ? "; one cut line in " + picture.cutLines().clothEvery() + " drawn"
            : "")
        + left(picture.clothLeft());
  }

  private static String size(double length, double width, Brief brief) {
    return number(length, 1) + " × " + number(width, 1) + " " + brief.unit().symbol();
  }

  private static String guide(Guide guide) {
    return "Half of the strip is used after about "
        + number(guide.guideHalf(), 1)
        + " of "
        + number(guide.guideTurns(), 1)
        + (guide.guideTurns() == 1 ? " ring" : " rings");
  }

  private static String money(List<MoneyShare> parts) {
    double total = parts.stream().mapToDouble(MoneyShare::moneyAmount).sum();
    var most =
        parts.stream().max(Comparator.comparingDouble(MoneyShare::moneyAmount)).orElseThrow();
    double amount = most.moneyAmount();
    String part =
        parts.stream().filter(p -> p.moneyAmount() == amount).findFirst().orElseThrow().moneyPart();
    return total > 0
        ? "About " + percent(amount / total) + " % of the price is " + part
        : "Nothing is charged";
  }

  private static String baseCloth(Brief brief, BasePicture picture, CutBase cloth) {
    return counted(cloth.places().bases(), "base")
        + " and "
        + counted(cloth.places().backs(), "back piece")
        + sizes(
            size(cloth.places().rows().baseBuyLength(), brief.base().baseFabricWidth(), brief),
            size(cloth.length(), cloth.width(), brief))
        + left(picture.baseDiscsLeft() + picture.baseBacksLeft());
  }

  private static String sizes(String bought, String usable) {
    return ": bought " + bought + ", usable " + usable;
  }

  private static String left(int pieces) {
    return pieces > 0 ? "; " + pieces + " more not drawn" : "";
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  private static String percent(double share) {
    return number(100 * share, 0);
  }

  /** Rounded half up to {@code places}, without needless zeros: 2.50 is 2.5. */
  private static String number(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(Rounding.toPlaces(places, value));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
