package frillbook.brief;

import frillbook.naming.Prefixed;

/** Two other looks set beside the brief's own, for a client to choose from. */
public record ChoiceSpec(
    @Prefixed("choice_two") LookSpec two, @Prefixed("choice_three") LookSpec three) {}
