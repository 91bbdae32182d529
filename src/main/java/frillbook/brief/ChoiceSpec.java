package frillbook.brief;

import frillbook.naming.Prefixed;
import java.util.Optional;

/**
 * Other looks set beside the brief's own, for a client to choose from: differences from it, so that
 * they follow when it changes.
 *
 * @param two empty where it is left out
 * @param twoApart empty for the spacing of the brief
 * @param three empty where it is left out
 * @param threeApart empty for the spacing of the brief
 */
public record ChoiceSpec(
    @Prefixed("choice_two") Optional<More> two,
    @Prefixed("choice_two") Optional<Apart> twoApart,
    @Prefixed("choice_three") Optional<More> three,
    @Prefixed("choice_three") Optional<Apart> threeApart) {

  /**
   * @param more times fuller than the brief; below 0 for flatter
   */
  public record More(double more) {}

  /**
   * @param spacing from ring to ring
   */
  public record Apart(double spacing) {}

  /** The second look beside {@code own}, if there is one. */
  public Optional<LookSpec> two(LookSpec own) {
    return look(own, two, twoApart);
  }

  /** The third look beside {@code own}, if there is one. */
  public Optional<LookSpec> three(LookSpec own) {
    return look(own, three, threeApart);
  }

  private static Optional<LookSpec> look(
      LookSpec own, Optional<More> differing, Optional<Apart> apart) {
    double spacing = apart.map(Apart::spacing).orElse(own.spacing());
    return differing.map(by -> new LookSpec(own.fullness() + by.more(), spacing));
  }
}
