package frillbook.formula;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a function takes and what it gives.
 *
 * @param takes one for each argument; the last stands for all that follow where it repeats
 * @param gives empty where it hands on one of its arguments
 */
public record FunctionShape(String name, List<Takes> takes, Optional<Sort> gives) {
  private static final Pattern WRITTEN =
      Pattern.compile("([A-Z0-9]+)\\(([a-z, -]*)(?:\\.\\.\\.)?\\) ([a-z]+)");

  /** What an argument may be. */
  public enum Takes {
    /** One number. */
    NUMBER,
    /** One value of any sort. */
    ANY,
    /** One condition, or a number that is 1 or 0. */
    TRUTH,
    /** Numbers, a whole column too. */
    NUMBERS,
    /** Conditions, a whole column too. */
    TRUTHS,
    /** Any values, a whole column too. */
    CELLS,
    /** Numbers worked out of whole columns, row by row. */
    ROWS,
    /** A value or a whole column of any sort, which the function may give. */
    GIVEN,
    /** A whole column of any sort, of which the function gives one. */
    GIVEN_OF;

    /** Whether a whole column can be taken as it is. */
    public boolean takesColumns() {
      return switch (this) {
        case NUMBERS, TRUTHS, CELLS, ROWS, GIVEN, GIVEN_OF -> true;
        case NUMBER, ANY, TRUTH -> false;
      };
    }

    /** Whether it must be a number. */
    public boolean isNumber() {
      return this == NUMBER || this == NUMBERS || this == ROWS;
    }

    /** Whether it must be a condition. */
    public boolean isTruth() {
      return this == TRUTH || this == TRUTHS;
    }
  }

  public FunctionShape {
    takes = List.copyOf(takes);
  }

  /** Reads {@code ROUND(number, number) number}. */
  static FunctionShape of(String written) {
    Matcher shape = WRITTEN.matcher(written);
    if (!shape.matches()) {
      throw new IllegalArgumentException("no function: " + written);
    }
    List<Takes> takes =
        Arrays.stream(shape.group(2).split(", "))
            .filter(word -> !word.isEmpty())
            .map(word -> Takes.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')))
            .toList();
    Optional<Sort> gives =
        Optional.of(shape.group(3))
            .filter(word -> !word.equals("given"))
            .map(word -> Sort.valueOf(word.toUpperCase(Locale.ROOT)));
    return new FunctionShape(shape.group(1), takes, gives);
  }

  /** What argument {@code index}, from 0, may be; there must be one. */
  public Takes takes(int index) {
    return takes.get(Math.min(index, takes.size() - 1));
  }

  /** Whether it hands on one of its arguments. */
  public boolean handsOn() {
    return gives.isEmpty();
  }
}
