package frillbook.press;

/** The version of the program, which a workbook carries. */
public final class Version {
  public static final String NUMBER = "0.1.0";

  /** The property of a workbook that says with which version it was made. */
  public static final String PROPERTY = "frillbook version";

  private Version() {}
}
