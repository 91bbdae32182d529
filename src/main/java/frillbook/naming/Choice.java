package frillbook.naming;

import java.util.Locale;

/** An input that is picked from a short list of words. */
public interface Choice {
  String name();

  /** The word a person picks: {@code NARROW_HEM} is {@code narrow hem}. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
