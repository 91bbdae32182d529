package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.Sample;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Engine and workbook, calculated by Apache POI, say the same. */
@Execution(ExecutionMode.CONCURRENT)
final class AgreementTest {
  private static final int RANDOM_BRIEFS = 520;
  private static final int EVERY_NTH = 30;

  private static Findings compared(List<TrialBrief> briefs) {
    return briefs.stream()
        .map(brief -> Trials.workbook(brief.unit()).compare(brief))
        .reduce(Findings.NONE, Findings::and);
  }

  private static void requireAgreement(String kind, List<TrialBrief> briefs) {
    long start = System.nanoTime();
    Findings findings = compared(Sample.of(briefs, EVERY_NTH));
    long seconds = Math.round((System.nanoTime() - start) / 1e9);
    System.out.println("Apache POI, " + kind + ": " + findings + ", " + seconds + " s");
    findings.requireAgreement();
  }

  @Test
  void randomBriefsAgree() {
    requireAgreement("random", RandomBriefs.of(Trials.TEMPLATE, RANDOM_BRIEFS));
  }

  @Test
  void endsOfEveryRangeAgree() {
    requireAgreement("ends of ranges", EdgeBriefs.of(Trials.TEMPLATE));
  }

  @Test
  void wholeQuotientsAgree() {
    requireAgreement("whole quotients", WholeQuotients.of(Trials.TEMPLATE));
  }

  @Test
  void specialBriefsAgree() {
    requireAgreement("special", PlainBriefs.of(Trials.TEMPLATE));
  }

  private static boolean hasPlan(TrialBrief brief) {
    Plan plan = brief.plan();
    return plan.checks().planOk() && plan.cutting().orElseThrow().cutOk();
  }

  private static long planned(List<TrialBrief> briefs) {
    return briefs.stream().filter(AgreementTest::hasPlan).count();
  }

  /** The part of them that is planned, as many as {@code least} in a hundred. */
  private static void requirePlans(int least, List<TrialBrief> briefs) {
    List<TrialBrief> tried = Sample.of(briefs, EVERY_NTH);
    long planned = planned(tried);
    assertTrue(100 * planned >= (long) least * tried.size(), planned + " of " + tried.size());
  }

  /** Else little but blanks would be compared. */
  @Test
  void nearlyAllOfTheOtherBriefsHaveAPlan() {
    requirePlans(90, EdgeBriefs.of(Trials.TEMPLATE));
    requirePlans(100, WholeQuotients.of(Trials.TEMPLATE));
    requirePlans(100, PlainBriefs.of(Trials.TEMPLATE));
  }

  /** Else little but blanks would be compared. */
  @Test
  void atLeastHalfOfTheRandomBriefsHaveAPlanInEveryGrain() {
    List<TrialBrief> tried = Sample.of(RandomBriefs.of(Trials.TEMPLATE, RANDOM_BRIEFS), 4);
    Map<String, Long> planned =
        tried.stream()
            .filter(AgreementTest::hasPlan)
            .collect(
                Collectors.groupingBy(
                    brief -> brief.inputs().get("grain").toString(),
                    TreeMap::new,
                    Collectors.counting()));
    assertEquals(3, planned.size(), planned.toString());
    long all = planned.values().stream().mapToLong(count -> count).sum();
    assertTrue(2 * all >= tried.size(), planned.toString());
    assertTrue(
        planned.values().stream().allMatch(count -> 26 * count >= tried.size()),
        planned.toString());
  }

  /** The other way round there are inputs, such as a client's name, that no number depends on. */
  @Test
  void everyComponentOfTheBriefIsAnInput() {
    TrialBrief preset = TrialBrief.preset(Trials.TEMPLATE, Trials.CM);
    Set<String> components = new TreeSet<>(NamedValues.of(preset.brief()).lines().keySet());
    assertTrue(components.contains("ring_spacing"), components.toString());
    components.removeAll(preset.presets().keySet());
    // Chosen when the workbook is made, so no cell of it.
    assertEquals(Set.of("unit"), components);
  }
}
