package frillbook.template;

import frillbook.source.Position;
import frillbook.wording.Sentence;
import java.util.Optional;

/**
 * A sentence across the sheet that the workbook puts together itself.
 *
 * @param text what it says
 * @param guard name of the line that must be 1 for the sentence to be shown; empty for always
 */
public record SentenceTemplate(WordingText text, Optional<String> guard, Position position)
    implements RowTemplate {

  /** Whether it says the same in every plan. */
  public boolean isFixed() {
    return guard.isEmpty() && text.names().isEmpty();
  }

  /** The sentence without its place. */
  public Sentence sentence() {
    return new Sentence(text.wording(), guard);
  }
}
