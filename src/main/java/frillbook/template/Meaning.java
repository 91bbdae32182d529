package frillbook.template;

import java.util.EnumSet;
import java.util.Set;

/**
 * What a part of a formula stands for.
 *
 * @param sorts what it may give; none where nothing is known, as of an empty text, which stands for
 *     a blank cell
 * @param several whether it is a whole column
 */
record Meaning(Set<Sort> sorts, boolean several) {
  static final Meaning UNKNOWN = new Meaning(Set.of(), false);

  Meaning {
    sorts = Set.copyOf(sorts);
  }

  static Meaning one(Sort sort) {
    return new Meaning(Set.of(sort), false);
  }

  static Meaning column(Set<Sort> sorts) {
    return new Meaning(sorts, true);
  }

  boolean mayBe(Sort sort) {
    return sorts.contains(sort);
  }

  /** Either of the two. */
  Meaning or(Meaning other) {
    Set<Sort> both = EnumSet.noneOf(Sort.class);
    both.addAll(sorts);
    both.addAll(other.sorts);
    return new Meaning(both, several || other.several);
  }

  /** The same of one cell. */
  Meaning single() {
    return new Meaning(sorts, false);
  }
}
