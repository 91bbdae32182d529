package frillbook;

import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.template.LineTemplate;
import frillbook.template.PlanWords;
import frillbook.template.TemplateReader;
import frillbook.template.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.util.HashMap;
import java.util.Map;

/** What the packaged templates say of a brief, in words. */
public record Said(PlanWords words) {
  private static final WorkbookTemplate TEMPLATE = TemplateReader.read(TemplateSource.packaged());

  public static Said of(Briefs briefs) {
    return of(briefs, Plan.of(briefs.brief()));
  }

  /** The same of a plan that is already made. */
  public static Said of(Briefs briefs, Plan made) {
    NamedValues plan = NamedValues.of(made);
    Map<String, Object> inputs = new HashMap<>();
    briefs.inputs().forEach((name, value) -> inputs.put(name, asInCell(value)));
    return new Said(new PlanWords(TEMPLATE, briefs.unit(), inputs, plan));
  }

  private static Object asInCell(Object value) {
    return value instanceof Number number ? (Object) number.doubleValue() : value;
  }

  /** What the line of text {@code name} says. */
  public String line(String name) {
    LineTemplate line =
        TEMPLATE.lines().stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
    return words.line(line).toString();
  }
}
