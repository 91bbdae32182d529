package frillbook.cutting;

/** What the plans of all grains have in common. */
public interface GrainPlan {
  /** Length of fabric bought. */
  double buyLength();

  /** Area of the pieces over usable width, rounded up to the buy step. */
  double lowerBound();

  /** Bought length over lower bound. */
  double ratio();

  /** Cut length of a full strip. */
  double stripLength();

  /** How many strips are cut. */
  StripsCut cut();
}
