package frillbook.template;

/** A file of a template that must not or cannot be read. */
final class TemplateFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String expected;
  private final String remedy;

  TemplateFileException(String found, String expected, String remedy) {
    super(found);
    this.expected = expected;
    this.remedy = remedy;
  }

  void tell(Position at, Mistakes mistakes) {
    mistakes.add(at, getMessage(), expected, remedy);
  }
}
