package frillbook.source;

import java.util.List;
import java.util.stream.Collectors;

/** A template that cannot be used; the message holds every mistake in it, one a line. */
public final class TemplateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Mistake> mistakes;

  public TemplateException(List<Mistake> mistakes) {
    super(mistakes.stream().map(Mistake::toString).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  /** In reading order; never empty. */
  public List<Mistake> mistakes() {
    return mistakes;
  }
}
