package frillbook.picture;

import frillbook.brief.Brief;
import frillbook.brief.RowStyle;
import frillbook.measure.Rounding;
import frillbook.rows.RowSizes;

/**
 * How the cushion is drawn from above. The outer radius of the rows is 1 until everything is scaled
 * to fit.
 *
 * <p>Ripples are 1.15 times as long as the drawn rows are apart, so that a fuller frill swings
 * wider; shorter where they would swing further than .65 of a spacing or where the rows are few.
 *
 * @param flowerWave wanted length of a ripple, in drawn ring spacings
 * @param flowerOuter outer radius of the rows, in the unit of the brief; half a spacing beyond the
 *     last separate ring
 * @param flowerInner inner radius, likewise
 * @param flowerHole inner over outer radius, at most .85
 * @param flowerMost most turns that can be drawn
 * @param flowerTurns turns drawn
 * @param flowerThinned whether that is fewer than are sewn
 * @param flowerRun drawn length of the rows, in drawn ring spacings
 * @param flowerWaves ripples drawn, a whole number
 * @param flowerPoints steps used: four for every ripple, so that each has its crest and its trough
 * @param flowerSpacing drawn ring spacing
 * @param flowerSwing amplitude: ripple depth times the length of one ripple
 * @param flowerRim radius of the free edge: one drawn spacing beyond the rows, .3 at most
 * @param flowerPetal amplitude of the free edge over its radius; it has 24 ripples
 * @param flowerEdge radius of the base
 * @param flowerScale what brings the outermost of them to 1
 */
public record FlowerShape(
    double flowerWave,
    double flowerOuter,
    double flowerInner,
    double flowerHole,
    int flowerMost,
    double flowerTurns,
    boolean flowerThinned,
    double flowerRun,
    int flowerWaves,
    int flowerPoints,
    double flowerSpacing,
    double flowerSwing,
    double flowerRim,
    double flowerPetal,
    double flowerEdge,
    double flowerScale) {
  private static final double MOST_WAVE = 1.15;

  private static final double MOST_SWING = .65;

  /** Ripples there is room for. */
  private static final int MOST_WAVES = Flower.STEPS / 4;

  static FlowerShape of(Brief brief, RowSizes sizes, int ringCount, double depth) {
    double spacing = brief.cushion().ringSpacing();
    boolean spiral = brief.cushion().rowStyle() == RowStyle.SPIRAL;
    double outer = spiral ? sizes.outerRadius() : sizes.firstRadius() + (ringCount - .5) * spacing;
    double inner =
        spiral ? brief.cushion().centreGap() : Math.max(0, sizes.firstRadius() - spacing / 2);
    double wave = Math.min(1, outer / spacing / 4) * wave(depth);
    double hole = Math.min(.85, inner / outer);
    double perTurn = Math.PI * (1 + hole) / (1 - hole);
    int most = Math.max(1, Rounding.down(Math.sqrt(MOST_WAVES * wave / perTurn)));
    double sewn = spiral ? (outer - inner) / spacing : ringCount;
    double turns = Math.min(sewn, most);
    double run = perTurn * turns * turns;
    int waves = (int) Math.floor(Rounding.settle(run / wave) + .5);
    double drawn = (1 - hole) / turns;
    double rim = 1 + Math.min(.3, drawn);
    double petal = 2 * Math.PI * depth / FlowerRim.PETALS;
    double edge = brief.cushion().diameter() / 2 / outer;
    return new FlowerShape(
        wave,
        outer,
        inner,
        hole,
        most,
        turns,
        Rounding.settle(sewn - most) > 0,
        run,
        waves,
        4 * waves,
        drawn,
        depth * run / waves,
        rim,
        petal,
        edge,
        1 / Math.max(rim * (1 + petal), edge));
  }

  private static double wave(double depth) {
    return MOST_WAVE * MOST_SWING / Math.max(MOST_SWING, MOST_WAVE * depth);
  }
}
