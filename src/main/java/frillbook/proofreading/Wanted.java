package frillbook.proofreading;

import frillbook.formula.Meaning;
import frillbook.formula.Sort;
import frillbook.template.ValueFormat;
import java.util.Optional;

/**
 * What a formula must give.
 *
 * @param place what it is for: {@code line ring_count}
 */
record Wanted(String place, Kind kind) {
  static final String A_TRUTH = "a condition, or a number that is 1 or 0";
  static final String COMPARE = "compare it: name=\"text\" or name>0";

  /** What is made of what it gives. */
  enum Kind {
    NUMBER,
    TEXT,
    TRUTH
  }

  /** What is wrong with what it gives. */
  record Objection(String found, String expected, String remedy) {}

  static Wanted of(String place, ValueFormat format) {
    return new Wanted(place, format == ValueFormat.TEXT ? Kind.TEXT : Kind.NUMBER);
  }

  static Wanted truth(String place) {
    return new Wanted(place, Kind.TRUTH);
  }

  /** Empty where {@code given} will do. */
  Optional<Objection> objection(Meaning given) {
    return switch (kind) {
      case TRUTH -> given.mayBe(Sort.TEXT) ? Optional.of(noTruth()) : Optional.empty();
      case NUMBER -> number(given);
      case TEXT -> text(given);
    };
  }

  private Objection noTruth() {
    return new Objection(place + " that gives a text", A_TRUTH, COMPARE);
  }

  private Optional<Objection> number(Meaning given) {
    if (given.mayBe(Sort.TEXT)) {
      return Optional.of(
          new Objection(
              place + " that gives a text", "a number", "write format: text or another formula"));
    }
    return given.mayBe(Sort.TRUTH) ? Optional.of(truthGiven()) : Optional.empty();
  }

  private Optional<Objection> text(Meaning given) {
    if (given.mayBe(Sort.NUMBER)) {
      return Optional.of(
          new Objection(
              place + " of format text that gives a number",
              "a text",
              "choose another format, or join the number to a text with & and FIXED"));
    }
    return given.mayBe(Sort.TRUTH) ? Optional.of(truthGiven()) : Optional.empty();
  }

  private Objection truthGiven() {
    return new Objection(
        place + " that gives TRUE or FALSE", "a number or a text", "write IF(…,1,0) around it");
  }
}
