package frillbook.press;

import java.nio.file.Path;

/** A workbook that could not be saved; nothing was left behind. */
public final class WorkbookFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why it could not be saved. */
  public enum Reason {
    /** A file of that name is there, and overwriting it was not asked for. */
    EXISTS,
    /** The folder it should go into is not there. */
    NO_FOLDER,
    /** The place cannot be written to. */
    NOT_WRITABLE
  }

  private final Reason reason;

  WorkbookFileException(Reason reason, Path path, Throwable cause) {
    super(sentence(reason, path), cause);
    this.reason = reason;
  }

  private static String sentence(Reason reason, Path path) {
    return switch (reason) {
      case EXISTS -> path + " already exists";
      case NO_FOLDER -> "The folder for " + path + " was not found";
      case NOT_WRITABLE -> path + " cannot be written";
    };
  }

  public Reason reason() {
    return reason;
  }
}
