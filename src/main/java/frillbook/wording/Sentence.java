package frillbook.wording;

import java.util.Optional;

/**
 * A wording that is said only where it makes sense.
 *
 * @param guard name of the line that must be 1 for it to be said; empty for always
 */
public record Sentence(Wording wording, Optional<String> guard) {}
