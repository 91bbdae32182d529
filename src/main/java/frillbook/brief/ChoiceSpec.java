package frillbook.brief;

import frillbook.naming.Prefixed;
import java.util.Optional;

/**
 * Other looks set beside the brief's own, for a client to choose from.
 *
 * @param two empty where it is left out
 * @param three likewise
 */
public record ChoiceSpec(
    @Prefixed("choice_two") Optional<LookSpec> two,
    @Prefixed("choice_three") Optional<LookSpec> three) {}
