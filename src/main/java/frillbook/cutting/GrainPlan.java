package frillbook.cutting;

/** What the plans of all grains have in common. */
public interface GrainPlan {
  /** The length of fabric. */
  LengthFound length();

  /** Length of fabric bought. */
  default double buyLength() {
    return length().buyLength();
  }

  /** Length of it left, washed and its ends straightened. */
  default double usableLength() {
    return length().usableLength();
  }

  /** Cut length of a full strip. */
  double stripLength();

  /** How many strips are cut. */
  StripsCut cut();
}
