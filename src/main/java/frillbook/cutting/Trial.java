package frillbook.cutting;

/** A row of a halving search. */
public interface Trial {
  /** The length tried, in buy steps. */
  int tried();

  /** The longest length known not to be enough, in buy steps. */
  int kept();

  default boolean enough() {
    return kept() < tried();
  }
}
