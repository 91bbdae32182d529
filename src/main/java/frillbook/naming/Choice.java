package frillbook.naming;

/** An input that is picked from a short list of words. */
public interface Choice extends Coded {
  /** The word a person picks: {@code NARROW_HEM} is {@code narrow hem}. */
  default String word() {
    return code().replace('_', ' ');
  }
}
