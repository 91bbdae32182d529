package frillbook.source;

import java.util.List;
import java.util.stream.Collectors;

/** A template that cannot be used; the message tells its mistakes, one a line. */
public final class TemplateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** As many as a person reads before correcting the first of them. */
  private static final int TOLD = 50;

  private final transient List<Mistake> mistakes;

  /**
   * @param mistakes in reading order
   * @param beyond how many there are besides
   */
  TemplateException(List<Mistake> mistakes, int beyond) {
    super(message(mistakes, beyond));
    this.mistakes = List.copyOf(mistakes);
  }

  private static String message(List<Mistake> mistakes, int beyond) {
    String told =
        mistakes.stream().limit(TOLD).map(Mistake::toString).collect(Collectors.joining("\n"));
    int untold = mistakes.size() + beyond - TOLD;
    return untold > 0
        ? told + "\nThere are " + untold + " more mistakes. Correct these first."
        : told;
  }

  /** In reading order, those too that the message leaves out; never empty. */
  public List<Mistake> mistakes() {
    return mistakes;
  }
}
