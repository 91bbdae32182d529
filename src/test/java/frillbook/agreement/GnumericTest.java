package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import frillbook.brief.Grain;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Gnumeric calculates the workbook. */
final class GnumericTest extends OtherEngineTest {
  private static final int RANDOM_BRIEFS = 8;
  private static final int EVERY_NTH_SPECIAL = 20;

  @Override
  Calculator calculator(Path printed) {
    return new Gnumeric(printed);
  }

  @Override
  List<TrialBrief> briefs() {
    return Stream.of(
            Sample.of(orders(), 7).stream(),
            Sample.of(RandomBriefs.of(Trials.TEMPLATE, RANDOM_BRIEFS), RANDOM_BRIEFS).stream(),
            Sample.of(some(PlainBriefs.of(Trials.TEMPLATE), EVERY_NTH_SPECIAL).toList(), 9)
                .stream(),
            ClearedTexts.byHalves(Trials.CM),
            Stream.of(SentencesTest.awkward()))
        .flatMap(kind -> kind)
        .toList();
  }

  @Override
  int everyNthUnusable() {
    return 67;
  }

  /** Orders of three, in every currency's places, every grain, and twice on the bias. */
  private static List<TrialBrief> orders() {
    return Trials.PRESETS.stream().flatMap(GnumericTest::orders).toList();
  }

  private static Stream<TrialBrief> orders(TrialBrief preset) {
    TrialBrief order =
        preset
            .with("quantity", 3.0)
            .with("join_finish", "french")
            .with("tax_rate", 0.0725)
            .with("tidy_step", 0.0);
    TrialBrief rings = order.with("row_style", "rings");
    TrialBrief bias = rings.with("grain", "bias");
    return Stream.of(
        rings.with("grain", "crosswise").titled("order across the fabric"),
        order.with("grain", "lengthwise").titled("order along the fabric"),
        bias.with("charge_as", "used").titled("order on the bias"),
        order.with("grain", "bias").with("matching_discs", 2.0).titled("spiral on the bias"));
  }

  private static long count(Predicate<TrialBrief> which) {
    return orders().stream()
        .filter(brief -> brief.plan().cutting().orElseThrow().cut().isPresent())
        .filter(which)
        .count();
  }

  private static boolean has(TrialBrief brief, String input, Object value) {
    return brief.inputs().get(input).equals(value);
  }

  /** Else little but blanks would be compared, or only the easy half. */
  @Test
  void theOrdersCoverWhatMakersOrder() {
    assertEquals(16, count(brief -> true));
    assertEquals(8, count(brief -> has(brief, "grain", Grain.BIAS.code())));
    assertTrue(count(brief -> brief.number("matching_discs") > 0) >= 6, "discs from the fabric");
    assertTrue(count(brief -> has(brief, "row_style", "rings")) >= 6, "separate rings");
    Set<Integer> places =
        orders().stream().map(brief -> brief.plan().moneyPlaces()).collect(Collectors.toSet());
    assertEquals(Set.of(0, 2, 3), places);
  }
}
