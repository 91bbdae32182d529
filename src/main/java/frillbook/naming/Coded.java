package frillbook.naming;

import java.util.Locale;

/** One of a few things that a plan tells apart. Which words it has, the templates say. */
public interface Coded {
  String name();

  /** How it is known outside the sheets: {@code NARROW_HEM} is {@code narrow_hem}. */
  default String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
