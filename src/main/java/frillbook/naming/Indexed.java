package frillbook.naming;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a list within a row: it has so many records, and the names within each begin with its number.
 * Twelve spots with the prefix {@code disc} are {@code disc_1_x} to {@code disc_12_y}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Indexed {
  int value();
}
