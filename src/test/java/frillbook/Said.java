package frillbook;

import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.reading.PackagedTemplates;
import frillbook.template.Form;
import frillbook.wording.PlanWords;
import java.util.HashMap;
import java.util.Map;

/** What the packaged templates say of a brief, in words. */
public record Said(PlanWords words) {
  private static final Form FORM = Form.of(PackagedTemplates.template());

  public static Said of(Briefs briefs) {
    return of(briefs, Plan.of(briefs.brief()));
  }

  /** The same of a plan that is already made. */
  public static Said of(Briefs briefs, Plan made) {
    NamedValues plan = NamedValues.of(made);
    Map<String, Object> inputs = new HashMap<>();
    briefs.inputs().forEach((name, value) -> inputs.put(name, asInCell(value)));
    return new Said(new PlanWords(FORM.vocabulary(), briefs.unit(), inputs, plan));
  }

  private static Object asInCell(Object value) {
    return value instanceof Number number ? (Object) number.doubleValue() : value;
  }

  /** What the line of text {@code name} says. */
  public String line(String name) {
    return words.value(name).orElseThrow().toString();
  }
}
