package frillbook.proofreading;

import frillbook.source.Mistakes;
import frillbook.source.Nearest;
import frillbook.template.RowTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether every input belongs to a part that is checked, and every part has an input. */
public final class PartCheck {
  private PartCheck() {}

  static void check(WorkbookTemplate template, Mistakes mistakes) {
    for (RowTemplate.InputChecks checks : template.rows(RowTemplate.InputChecks.class)) {
      inputs(template, checks, mistakes);
      parts(template, checks, mistakes);
    }
  }

  private static void inputs(
      WorkbookTemplate template, RowTemplate.InputChecks checks, Mistakes mistakes) {
    template.inputs().stream()
        .filter(input -> !input.use().part().isEmpty())
        .filter(input -> !checks.parts().contains(input.use().part()))
        .forEach(
            input ->
                mistakes.add(
                    input.position(),
                    "the part " + input.use().part() + " of input " + input.name(),
                    "one of " + String.join(", ", checks.parts()),
                    "correct it or add it to input_checks"
                        + Nearest.hint(input.use().part(), checks.parts())));
  }

  private static void parts(
      WorkbookTemplate template, RowTemplate.InputChecks checks, Mistakes mistakes) {
    List<String> used = template.inputs().stream().map(input -> input.use().part()).toList();
    Set<String> seen = new HashSet<>();
    for (String part : checks.parts()) {
      if (!used.contains(part)) {
        tell(checks, "the part " + part + ", which no input belongs to", mistakes);
      } else if (!seen.add(part)) {
        tell(checks, "the part " + part + " a second time", mistakes);
      }
    }
  }

  private static void tell(RowTemplate.InputChecks checks, String found, Mistakes mistakes) {
    mistakes.add(
        checks.position(), found, "each part of the inputs once", "take it out of input_checks");
  }
}
