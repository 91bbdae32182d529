package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.Range;
import java.util.stream.Stream;

/** What a person may leave in a cell that cannot be used. */
final class UnusableValues {
  private UnusableValues() {}

  /** Nothing, words for a number and the reverse, and numbers just out of range. */
  static Stream<Object> of(InputTemplate input, LengthUnit unit) {
    return all(input, unit).filter(value -> value != null || !input.use().optional());
  }

  private static Stream<Object> all(InputTemplate input, LengthUnit unit) {
    Range range = input.range(unit);
    if (input.kind() == InputKind.TEXT) {
      return Stream.of("x".repeat(InputTemplate.LONGEST_TEXT + 1));
    } else if (input.kind() == InputKind.CHOICE) {
      return Stream.of(null, "velvet", 1.0);
    } else if (input.kind() == InputKind.COUNT) {
      return Stream.of(null, "two", range.from() - 1, range.to() + 1, range.from() + 0.5);
    }
    double step = (range.to() - range.from()) / 1000;
    return Stream.of(null, "about 1", range.from() - step, range.to() + step);
  }
}
