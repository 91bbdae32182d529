package frillbook.formula;

import java.util.EnumSet;
import java.util.Set;

/**
 * What a part of a formula stands for.
 *
 * @param sorts what it may give; none where nothing is known, as of an empty text, which stands for
 *     a blank cell
 * @param several whether it is a whole column
 */
public record Meaning(Set<Sort> sorts, boolean several) {
  public static final Meaning UNKNOWN = new Meaning(Set.of(), false);

  public Meaning {
    sorts = Set.copyOf(sorts);
  }

  public static Meaning one(Sort sort) {
    return new Meaning(Set.of(sort), false);
  }

  public static Meaning column(Set<Sort> sorts) {
    return new Meaning(sorts, true);
  }

  public boolean mayBe(Sort sort) {
    return sorts.contains(sort);
  }

  /** Either of the two. */
  public Meaning or(Meaning other) {
    Set<Sort> both = EnumSet.noneOf(Sort.class);
    both.addAll(sorts);
    both.addAll(other.sorts);
    return new Meaning(both, several || other.several);
  }

  /** The same of one cell. */
  public Meaning single() {
    return new Meaning(sorts, false);
  }
}
