package frillbook.materials;

import frillbook.brief.Brief;
import frillbook.money.Money;
import java.util.List;

/**
 * Everything that is bought for the whole order.
 *
 * @param materialsTotal of the amounts charged
 */
public record Materials(List<Material> materials, double materialsTotal) {

  public static Materials of(Brief brief, MaterialNeeds needs) {
    List<Material> lines = Material.all(brief, needs);
    double[] charged = lines.stream().mapToDouble(Material::materialCharged).toArray();
    return new Materials(lines, Money.in(brief.money().currencyCode()).sum(charged));
  }

  /** What is charged for frill fabric and thread, which another look changes. */
  public double chargedForLook() {
    return charged(MaterialName.FRILL_FABRIC) + charged(MaterialName.THREAD);
  }

  /** What is charged for the material {@code name}; 0 where there is none. */
  public double charged(MaterialName name) {
    return materials.stream()
        .filter(line -> line.materialName() == name)
        .mapToDouble(Material::materialCharged)
        .sum();
  }
}
