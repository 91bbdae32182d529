package frillbook.source;

/** A file of a template that must not or cannot be read. */
public final class TemplateFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String expected;
  private final String remedy;

  public TemplateFileException(String found, String expected, String remedy) {
    super(found);
    this.expected = expected;
    this.remedy = remedy;
  }

  public void tell(Position at, Mistakes mistakes) {
    mistakes.add(at, getMessage(), expected, remedy);
  }
}
