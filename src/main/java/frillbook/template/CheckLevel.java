package frillbook.template;

/** How grave a failed check is. */
public enum CheckLevel {
  /** The plan cannot be used. */
  STOP(1),
  /** The plan can be used by someone who has read the sentence. */
  LOOK_AGAIN(2);

  private final int code;

  CheckLevel(int code) {
    this.code = code;
  }

  /** The value of the check's cell when it fails; it is 0 when all is well. */
  public int code() {
    return code;
  }
}
