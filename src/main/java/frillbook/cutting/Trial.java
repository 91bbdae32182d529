package frillbook.cutting;

/** A row of a halving search. */
public interface Trial {
  /** The length tried, in buy steps. */
  int tried();

  /** The length left of it, washed and its ends straightened. */
  double usable();

  boolean enough();

  /** The longest length known not to be enough, in buy steps. */
  int kept();
}
