package frillbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.stream.IntStream;

/** What slips of the hand do to a text: each of these is one, at a place the dice choose. */
enum Damage {
  A_CHARACTER_LEFT_OUT {
    @Override
    String to(String text, Random dice) {
      int at = dice.nextInt(text.length());
      return text.substring(0, at) + text.substring(at + 1);
    }
  },
  A_CHARACTER_TOO_MANY {
    @Override
    String to(String text, Random dice) {
      int at = dice.nextInt(text.length());
      char typed = TYPED.charAt(dice.nextInt(TYPED.length()));
      return text.substring(0, at) + typed + text.substring(at);
    }
  },
  TWO_CHARACTERS_SWAPPED {
    @Override
    String to(String text, Random dice) {
      int at = dice.nextInt(text.length() - 1);
      return text.substring(0, at) + text.charAt(at + 1) + text.charAt(at) + text.substring(at + 2);
    }
  },
  A_LINE_LEFT_OUT {
    @Override
    String to(String text, Random dice) {
      List<String> lines = lines(text);
      lines.remove(dice.nextInt(lines.size()));
      return joined(lines);
    }
  },
  A_LINE_TWICE {
    @Override
    String to(String text, Random dice) {
      List<String> lines = lines(text);
      int at = dice.nextInt(lines.size());
      lines.add(at, lines.get(at));
      return joined(lines);
    }
  },
  TWO_LINES_SWAPPED {
    @Override
    String to(String text, Random dice) {
      List<String> lines = lines(text);
      Collections.swap(lines, dice.nextInt(lines.size()), dice.nextInt(lines.size()));
      return joined(lines);
    }
  },
  ANOTHER_VALUE {
    @Override
    String to(String text, Random dice) {
      List<String> lines = lines(text);
      int at = dice.nextInt(lines.size());
      String value = VALUES.get(dice.nextInt(VALUES.size()));
      lines.set(at, lines.get(at).replaceFirst("(?<=: ).*", Matcher.quoteReplacement(value)));
      return joined(lines);
    }
  },
  TWO_PIECES_OF_A_FORMULA_SWAPPED {
    @Override
    String to(String text, Random dice) {
      List<String> lines = lines(text);
      List<Integer> formulas =
          IntStream.range(0, lines.size())
              .filter(i -> lines.get(i).contains("formula: "))
              .boxed()
              .toList();
      if (!formulas.isEmpty()) {
        int at = formulas.get(dice.nextInt(formulas.size()));
        int from = lines.get(at).indexOf("formula: ") + "formula: ".length();
        lines.set(
            at, lines.get(at).substring(0, from) + swapped(lines.get(at).substring(from), dice));
      }
      return joined(lines);
    }
  };

  private static final String TYPED = "\"'{}[]():,;#&*!|>%@`-+^=<\\\t\u00a0“”×0aZ";

  private static final List<String> VALUES =
      List.of(
          "0",
          "1",
          "-1",
          "2,5",
          "\"\"",
          "abc",
          "NaN",
          "1e308",
          "[a]",
          "{a: 1}",
          "none",
          "text",
          "flag",
          "money",
          "true",
          "'\"abc\"'",
          "diameter",
          "grain",
          "check_fault",
          "ring_radius",
          "plan_ok",
          "SUM(diameter)",
          "choice",
          "length",
          "currency",
          "\"{unit}\"",
          "\"{n}\"",
          "\"{g}\"",
          "10000",
          "'='",
          "~",
          "!!int 3",
          "&a x",
          "*a",
          "|",
          "\"a\\0\"",
          "1/0",
          "1=1",
          "XLOOKUP(1,2,3)",
          "((((((((",
          "\"{a, plural, other {b}}\"");

  abstract String to(String text, Random dice);

  private static List<String> lines(String text) {
    return new ArrayList<>(text.lines().toList());
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }

  private static String swapped(String formula, Random dice) {
    List<String> pieces = new ArrayList<>(List.of(formula.split("\\b")));
    Collections.swap(pieces, dice.nextInt(pieces.size()), dice.nextInt(pieces.size()));
    return String.join("", pieces);
  }
}
