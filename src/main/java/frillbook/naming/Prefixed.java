package frillbook.naming;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A record component whose own components carry this prefix in their names, because the same record
 * stands in several places: {@code stripCount} of {@code @Prefixed("lengthwise")} is {@code
 * lengthwise_strip_count} in the workbook.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Prefixed {
  /** The prefix without its underscore. */
  String value();
}
