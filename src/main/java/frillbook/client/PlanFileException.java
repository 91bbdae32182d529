package frillbook.client;

/** A file that is no usable plan; the message says where, what was found and what to do. */
public final class PlanFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  PlanFileException(String message) {
    super(message);
  }
}
