package frillbook.cutting;

/** A row of a halving search. */
public interface Trial {
  int tried();

  boolean enough();

  int kept();
}
