package frillbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Briefs;
import frillbook.plan.Plan;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The points that every ring of petals is drawn through, step by step round. */
class FlowerTest {
  private static final int STEPS = 144;

  /** Rows by which the pale copy of each ring begins further down. */
  private static final int TURN = 1;

  /** Places are drawn to three decimals. */
  private static final double PLACE = 5.1e-4;

  private static Flower flower(double fullness, int rings) {
    double depth = Ripple.of(fullness).rippleDepth();
    return Flower.of(Optional.of(FlowerShape.of(rings, depth)), depth);
  }

  /** How far out ring {@code number} reaches, from the outermost, which is the first. */
  private static double[] ring(Flower flower, int number) {
    return flower.petals().stream().mapToDouble(at -> at.rings().get(number - 1).out()).toArray();
  }

  /** Flat to the fullest, one ring to many more than are drawn. */
  static Stream<Arguments> cushions() {
    return Stream.of(1.0, 1.5, 2.2, 3.0, 6.0)
        .flatMap(full -> Stream.of(1, 5, 9, 12, 40).map(rings -> Arguments.of(full, rings)));
  }

  private static double farthest(Flower flower, double direction) {
    double farthest = 0;
    for (int number = 1; number <= 12; number++) {
      double[] out = ring(flower, number);
      for (int step = 0; step < STEPS; step++) {
        double along = Math.cos(2 * Math.PI * step / STEPS - direction);
        farthest = Math.max(farthest, along * Math.max(out[step], out[step + TURN]));
      }
    }
    return farthest;
  }

  @ParameterizedTest
  @MethodSource("cushions")
  void theFlowerReachesAsFarInEveryDirection(double fullness, int rings) {
    Flower flower = flower(fullness, rings);
    for (int quarter = 0; quarter < 4; quarter++) {
      assertEquals(1, farthest(flower, quarter * Math.PI / 2), 5e-3);
    }
  }

  /** The way from point to point, over the circle midway between tips and hollows. */
  @ParameterizedTest
  @MethodSource("cushions")
  void theEdgeOfThePetalsIsAsLongAsTheFrillIsFull(double fullness, int rings) {
    double[] out = ring(flower(fullness, rings), 1);
    double edge = 0;
    double most = 0;
    double least = 1;
    for (int step = 0; step < STEPS; step++) {
      double next = out[step + 1];
      double turned = Math.cos(2 * Math.PI / STEPS);
      edge += Math.sqrt(out[step] * out[step] + next * next - 2 * out[step] * next * turned);
      most = Math.max(most, out[step]);
      least = Math.min(least, out[step]);
    }
    assertEquals(fullness, edge / (Math.PI * (most + least)), .03 * fullness);
  }

  @ParameterizedTest
  @MethodSource("cushions")
  void noPetalPassesTheCentre(double fullness, int rings) {
    Flower flower = flower(fullness, rings);
    for (int number = 1; number <= Math.min(12, rings); number++) {
      for (double out : ring(flower, number)) {
        assertTrue(out > 0 && out <= 1, number + ": " + out);
      }
    }
  }

  /** A petal is so many steps wide, and the last step is the first again. */
  @ParameterizedTest
  @MethodSource("cushions")
  void allPetalsOfARingAreAlike(double fullness, int rings) {
    Flower flower = flower(fullness, rings);
    assertEquals(STEPS + TURN, flower.petals().size());
    for (int number = 1; number <= Math.min(12, rings); number++) {
      int petals = flower.petalRings().get(number - 1).petalCount();
      assertEquals(0, STEPS % petals);
      double[] out = ring(flower, number);
      for (int step = 0; step < out.length; step++) {
        assertEquals(out[step % (STEPS / petals)], out[step], 1.1e-3);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cushions")
  void ringsThatAreNotSewnLeaveNothing(double fullness, int rings) {
    Flower flower = flower(fullness, rings);
    for (int number = rings + 1; number <= 12; number++) {
      for (double out : ring(flower, number)) {
        assertEquals(0, out);
      }
    }
  }

  /** A gap of 5 in to either side leaves no room for a ring on a cushion of 6 in. */
  @Test
  void withoutAPlanNothingIsDrawn() {
    Plan plan = Plan.of(Briefs.inch().with("diameter", 6).with("centre_gap", 5).brief());
    assertTrue(plan.rows().isEmpty());
    for (int number = 1; number <= 12; number++) {
      assertEquals(0, Arrays.stream(ring(plan.flower(), number)).max().orElseThrow());
      assertEquals(0, Arrays.stream(ring(plan.flower(), number)).min().orElseThrow());
    }
  }

  /**
   * By hand, without ripples: the outermost of three rings lies 2 3/4 spacings from the centre and
   * is brought to 1; the others lie at 1 3/4 and 3/4 spacings.
   */
  @Test
  void flatRingsAreCirclesEvenlyApart() {
    Flower flower = flower(1, 3);
    double[] radii = {1, .636364, .272727};
    for (int number = 1; number <= 3; number++) {
      for (double out : ring(flower, number)) {
        assertEquals(radii[number - 1], out, PLACE);
      }
    }
  }

  /**
   * By hand, five rings at fullness 2: the spacing is 1/5.25 = .190476, a ripple .413895 as high as
   * long (computed from the elliptic integral). A petal as wide as three spacings, .571429, goes
   * 11.0 times into a circle: 12 petals. 2π × .413895 = 2.600579, a twelfth is .216715; the tips of
   * the outermost, 4 3/4 spacings out, come to .904762 × 1.216715 = 1.100837 and are brought to 1:
   * radius .821886, swing .178114.
   *
   * <p>So many petals as a ring needs are 7 × .413895 = 2.897 or 12 times its radius. The next has
   * 12 × .714286 = 8.57: 12 too, radius .648857, swing .140617. The third 12 × .523810 = 6.29, more
   * than 6: 12. The fourth 12 × .333333 = 4: 4 petals, radius .302800, swing 2.600579 × .302800 ÷ 4
   * = .196864. The last 2.9: 4, radius .129771, swing .084370. Every other is turned.
   */
  @ParameterizedTest
  @CsvSource({
    "1,12,.821886,.178114",
    "2,12,.648857,-.140617",
    "3,12,.475829,.103119",
    "4,4,.302800,-.196864",
    "5,4,.129771,.084370"
  })
  void everyRingSwingsAboutItsSewnLine(int number, int petals, double radius, double swing) {
    Flower flower = flower(2, 5);
    PetalRing ring = flower.petalRings().get(number - 1);
    assertEquals(petals, ring.petalCount());
    assertEquals(radius, ring.petalRadius(), 2e-6);
    assertEquals(swing, ring.petalSwing(), 2e-6);
    double[] out = ring(flower, number);
    for (int step = 0; step < STEPS; step++) {
      double angle = Math.toRadians(2.5 * step);
      assertEquals(radius + swing * Math.cos(petals * angle), out[step], PLACE);
    }
  }

  /**
   * By hand, the spacing of m rings being 1/(m + 1/4), 2π × (m + 1/4) ÷ 3 petals are wanted while
   * the frill is flat: 2.6, 11.0, 13.1, 19.4 and 25.7; at fullness 6 one spacing holds more.
   */
  @ParameterizedTest
  @CsvSource({"1,1,8", "1,5,12", "1,6,12", "1,9,24", "1,12,24", "6,1,12", "6,12,24"})
  void moreRingsHaveMorePetals(double fullness, int rings, int petals) {
    assertEquals(petals, flower(fullness, rings).petalRings().get(0).petalCount());
  }

  @Test
  void noMoreThanTwelveRingsAreDrawn() {
    assertFalse(FlowerShape.of(12, .5).flowerThinned());
    assertTrue(FlowerShape.of(13, .5).flowerThinned());
    assertEquals(flower(2.5, 12).petals(), flower(2.5, 40).petals());
  }

  /** A cushion of the presets: 10 2/3 turns are eleven rings. */
  @Test
  void theRingsOfThePlanAreDrawn() {
    List<PetalRing> rings = Drawn.of(Briefs.inch()).orElseThrow().plan().flower().petalRings();
    assertEquals(11, rings.stream().filter(ring -> ring.petalRadius() > 0).count());
  }

  /**
   * By hand, twelve flat rings of 24 petals: the nth from outside lies (12 3/4 − n) ÷ 11 3/4 as far
   * out as the first and needs 24 × (12 3/4 − n) ÷ 12 1/4 petals: 13.2 the sixth, 11.3 the seventh,
   * 7.3 the ninth, 5.4 the tenth.
   */
  @ParameterizedTest
  @CsvSource({"1,24", "6,24", "7,12", "9,12", "10,6", "12,6"})
  void innerRingsHaveHalfThePetalsOrAQuarter(int number, int petals) {
    assertEquals(petals, flower(1, 12).petalRings().get(number - 1).petalCount());
  }
}
