package frillbook.client;

import frillbook.calculation.CellError;
import frillbook.calculation.WorkbookValues;
import frillbook.workbook.FormulaTranslation;
import java.util.Optional;

/**
 * What the cell of an input holds in a plan that was saved.
 *
 * <p>A formula that a person put there is calculated, since not every program saves its value.
 * Where one was saved it must be the same: it may be older than what the formula reads, and a price
 * would follow from it. A value that was saved is taken only where the library cannot calculate.
 *
 * @param value a Double, a String, a Boolean or a {@link CellError}
 * @param problem why it cannot be known what the cell holds
 */
public record SavedInput(Object value, Optional<String> problem) {
  private static final String REMEDY =
      " Open and save the plan in a spreadsheet program, or type the value in place of the formula.";

  /** Of the larger of two values; programs differ in the last figures. */
  private static final double SAME = 1e-9;

  static SavedInput of(WorkbookValues values, String name) {
    return values.hasFormula(name)
        ? of(values.calculated(name), values.saved(name))
        : new SavedInput(values.value(name), Optional.empty());
  }

  private static SavedInput of(Optional<Object> calculated, Optional<Object> saved) {
    Object value = calculated.or(() -> saved).orElse("");
    if (calculated.isEmpty() && saved.isEmpty()) {
      return unknown(value, "its formula cannot be calculated here, and no value was saved.");
    } else if (saved.isPresent() && !same(value, saved.get())) {
      String both = " comes to " + shown(value) + ", but " + shown(saved.get()) + " was saved.";
      return unknown(value, "its formula" + both);
    }
    return new SavedInput(value, Optional.empty());
  }

  private static SavedInput unknown(Object value, String why) {
    return new SavedInput(value, Optional.of(why + REMEDY));
  }

  private static boolean same(Object one, Object other) {
    if (one instanceof Double a && other instanceof Double b) {
      return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }
    return one.equals(other);
  }

  /** A value as a sentence tells it. */
  static String shown(Object value) {
    String text = value instanceof Double n ? FormulaTranslation.number(n) : value.toString();
    return text.isEmpty() ? "nothing" : "\"" + text + "\"";
  }
}
