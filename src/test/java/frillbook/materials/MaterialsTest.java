package frillbook.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.Briefs;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** 50 in of frill fabric used and 54 bought, 18 and 22 1/2 of base fabric, by eighths of a yard. */
class MaterialsTest {
  private static final MaterialNeeds NEEDS = new MaterialNeeds(50, 54, 18, 22.5, 20, 1, .3, 1.4);

  private static Materials materials(Briefs briefs) {
    return Materials.of(briefs.brief(), NEEDS);
  }

  private static Material line(MaterialName name, Briefs briefs) {
    return materials(briefs).materials().stream()
        .filter(line -> line.materialName() == name)
        .findFirst()
        .orElseThrow();
  }

  /** By hand: 54 in are 1 1/2 yd, at 12 a yard 18; 50 ÷ 36 × 12 = 16.67. */
  @Test
  void fabricIsChargedAsBoughtOrAsUsed() {
    Material bought = line(MaterialName.FRILL_FABRIC, Briefs.inch());
    assertEquals(1.5, bought.materialBought(), 1e-9);
    assertEquals(18, bought.materialCharged());
    Briefs used = Briefs.inch().with("charge_as", "used");
    assertEquals(16.67, line(MaterialName.FRILL_FABRIC, used).materialCharged());
  }

  /** By hand: 20 in need five eighths of a yard, at 4 a yard 2.50. */
  @Test
  void interfacingIsBoughtByTheStepOfFabric() {
    Material line = line(MaterialName.INTERFACING, Briefs.inch());
    assertEquals(.625, line.materialBought(), 1e-9);
    assertEquals(2.5, line.materialCharged());
  }

  @Test
  void bagsAndReelsAreBoughtWhole() {
    assertEquals(1, line(MaterialName.FILLING, Briefs.inch()).materialBought());
    assertEquals(2, line(MaterialName.THREAD, Briefs.inch()).materialBought());
  }

  /** By hand: three at 9 each are 27; the 5 for a bag of fibre are not looked at. */
  @ParameterizedTest
  @ValueSource(strings = {"ready_pad", "foam_disc"})
  void padsAndFoamHaveAPriceOfTheirOwn(String filling) {
    MaterialNeeds three = new MaterialNeeds(50, 54, 18, 22.5, 20, 1, 3, 1.4);
    Materials materials = Materials.of(Briefs.inch().with("filling", filling).brief(), three);
    assertEquals(27, materials.charged(MaterialName.FILLING));
  }

  /** By hand: 2.3 in packets of 1/2 are 2.5, at 1.10 each 2.75. */
  @Test
  void aMaterialOfTheMakersOwnHasItsOwnStep() {
    Briefs briefs =
        Briefs.inch()
            .with("extra_two_needed", 2.3)
            .with("extra_two_step", .5)
            .with("price_extra_two", 1.1);
    assertEquals(2.5, line(MaterialName.EXTRA_TWO, briefs).materialBought(), 1e-9);
    assertEquals(2.75, line(MaterialName.EXTRA_TWO, briefs).materialCharged());
  }

  /** By hand: 18 + 22.5 ÷ 36 × 6 + 2.50 + 3 + 5 + 2 × 2.50 = 37.25. */
  @Test
  void theTotalIsTheSumOfTheLines() {
    assertEquals(37.25, materials(Briefs.inch()).materialsTotal());
  }

  /** By hand: 18 of the 22 1/2 in of base fabric are used, half a yard, at 6 a yard 3. */
  @Test
  void baseFabricIsChargedAsUsedByTheYard() {
    Material used = line(MaterialName.BASE_FABRIC, Briefs.inch().with("charge_as", "used"));
    assertEquals(.5, used.materialNeeded(), 1e-12);
    assertEquals(3, used.materialCharged());
  }

  /** By hand: 18 for frill fabric and 5 for two reels; base, fill and zip stay the same. */
  @Test
  void anotherLookChangesFrillFabricAndThread() {
    assertEquals(23, materials(Briefs.inch()).chargedForLook());
  }

  @Test
  void aMaterialIsChargedByItsName() {
    assertEquals(5, materials(Briefs.inch()).charged(MaterialName.FILLING));
  }

  /**
   * By hand: 3.75 for base fabric is 4 yen, 2.5 for interfacing 3, 5 for thread 5: 18 + 4 + 3 + 3 +
   * 5 + 5.
   */
  @Test
  void everyLineIsRoundedInItsCurrency() {
    assertEquals(38, materials(Briefs.inch().in("JPY")).materialsTotal());
  }

  /** Fabrics, interfacing, zip, filling and thread are bought; of three extras the second. */
  @Test
  void whatIsBoughtHasItsPlaceOnTheList() {
    Briefs briefs = Briefs.inch().with("extra_two_needed", 2);
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6, 6, 7, 7),
        materials(briefs).materials().stream().map(Material::materialPlace).toList());
  }
}
