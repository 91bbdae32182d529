package frillbook.agreement;

import frillbook.measure.LengthUnit;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.Range;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.CodeWord;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Briefs drawn from the whole range of every input, the same ones in every run.
 *
 * <p>Where every input is drawn freely, few cushions can be made: the fabric is too narrow or the
 * centre gap too wide. So in most briefs only a part of the numbers is drawn and the others keep
 * their presets.
 */
final class RandomBriefs {
  private static final long SEED = 20_240_517;
  private static final double[] SHARES_OF_NUMBERS = {0.1, 0.2, 0.35, 1};

  private static final List<String> TEXTS =
      List.of("", "rust voile, 140 cm", "\"Madder\" & <indigo>", "—".repeat(200), "=1/0", "12");

  /** Lengths people set a rule to. */
  private static final double INCH_STEP = 0.125;

  private static final double CM_STEP = 0.1;
  private static final double OTHER_STEP = 0.01;

  private final WorkbookTemplate template;
  private SplittableRandom random = new SplittableRandom(SEED);

  private RandomBriefs(WorkbookTemplate template) {
    this.template = template;
  }

  /** {@code count} briefs, in both units and several currencies by turns. */
  static List<TrialBrief> of(WorkbookTemplate template, int count) {
    RandomBriefs briefs = new RandomBriefs(template);
    List<TrialBrief> drawn = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      TrialBrief preset = Trials.PRESETS.get(number % Trials.PRESETS.size());
      double share = SHARES_OF_NUMBERS[number / Trials.PRESETS.size() % SHARES_OF_NUMBERS.length];
      drawn.add(briefs.brief(number, preset, share).titled("random brief " + number));
    }
    return drawn;
  }

  private TrialBrief brief(int number, TrialBrief preset, double share) {
    TrialBrief brief = preset;
    for (InputTemplate input : template.inputs()) {
      // By name, so that an input that is added does not change what is drawn for the others.
      random = new SplittableRandom(SEED + 1_000_003L * number + input.name().hashCode());
      if (input.kind() == InputKind.CURRENCY) {
        continue;
      }
      if (input.kind() == InputKind.CHOICE || random.nextDouble() < share) {
        brief = brief.with(input.name(), value(input, preset.unit()));
      }
    }
    return brief;
  }

  private Object value(InputTemplate input, LengthUnit unit) {
    if (input.isWords()) {
      return choice(
          input.kind() == InputKind.TEXT
              ? TEXTS
              : input.choices().stream().map(CodeWord::code).toList());
    }
    Range range = input.range(unit);
    double number = random.nextBoolean() ? even(range) : logarithmic(range);
    boolean rounded = input.kind() == InputKind.COUNT || random.nextBoolean();
    return rounded ? rounded(number, step(input.kind(), unit), range) : number;
  }

  private String choice(List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private double even(Range range) {
    return range.from() + random.nextDouble() * (range.to() - range.from());
  }

  /** As many small values as large ones; 0 stands for a thousandth of the largest. */
  private double logarithmic(Range range) {
    double least = range.from() > 0 ? range.from() : range.to() / 1000;
    double number = least * Math.pow(range.to() / least, random.nextDouble());
    return Math.min(range.to(), number);
  }

  private static double step(InputKind kind, LengthUnit unit) {
    return switch (kind) {
      case COUNT -> 1;
      case LENGTH -> unit == LengthUnit.INCH ? INCH_STEP : CM_STEP;
      default -> OTHER_STEP;
    };
  }

  private static double rounded(double number, double step, Range range) {
    double whole = Math.rint(number / step) * step;
    return Math.min(range.to(), Math.max(range.from(), whole));
  }
}
