package frillbook.picture;

import frillbook.measure.Rounding;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep the frill's ripples are for their length.
 *
 * @param ripples Newton steps from 2√(fullness − 1), which holds for shallow ripples
 * @param rippleDepth amplitude over wavelength: 0 at fullness 1, .413895 at 2, .553776 at 2.5
 * @param rippleHeight from trough to crest over wavelength
 * @param ripplesShow whether they are at least a hundredth as high as long
 */
public record Ripple(
    List<RippleStep> ripples, double rippleDepth, double rippleHeight, boolean ripplesShow) {
  private static final int STEPS = 6;

  public static Ripple of(double fullness) {
    List<RippleStep> steps = new ArrayList<>();
    double q = fullness - 1 < Rounding.TINY ? 0 : 2 * Math.sqrt(fullness - 1);
    for (int i = 0; i < STEPS; i++) {
      steps.add(RippleStep.of(q, fullness));
      q = steps.get(i).rippleNext();
    }
    double depth = q / (2 * Math.PI);
    boolean show = Rounding.toPlaces(2, 2 * depth) > 0;
    return new Ripple(List.copyOf(steps), depth, 2 * depth, show);
  }
}
