package frillbook.cutting;

/** A row of a halving search. */
interface Trial {
  int tried();

  boolean enough();

  int kept();
}
