package frillbook.said;

import frillbook.brief.Brief;
import frillbook.measure.LengthUnit;
import frillbook.naming.NamedValues;
import frillbook.plan.Plan;
import frillbook.reading.PackagedTemplates;
import frillbook.template.CheckTemplate;
import frillbook.template.Form;
import frillbook.template.LineTemplate;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.TableTemplate;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.PlanWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Everything that the workbook of one plan says in sentences, sheet by sheet. */
final class SaidPlan {
  private static final WorkbookTemplate TEMPLATE = PackagedTemplates.template();

  private static final Form FORM = Form.of(TEMPLATE);

  private final PlanWords words;

  private SaidPlan(LengthUnit unit, Map<String, Object> inputs) {
    NamedValues plan = NamedValues.of(Plan.of(Brief.of(unit, inputs)));
    NamedValues complete = PlanWords.complete(FORM.vocabulary(), unit, inputs, plan);
    this.words = new PlanWords(FORM.vocabulary(), unit, inputs, complete);
  }

  /** The plan of the presets with a few inputs changed. */
  static SaidPlan of(LengthUnit unit, Map<String, Object> changed) {
    Map<String, Object> inputs = FORM.presets(unit);
    for (String name : changed.keySet()) {
      if (!inputs.containsKey(name)) {
        throw new IllegalArgumentException("no input is named " + name);
      }
    }
    inputs.putAll(changed);
    return new SaidPlan(unit, inputs);
  }

  Object value(String name) {
    return words.value(name).orElseThrow();
  }

  /** One line for each sentence, under the name of its sheet; nothing for what is not said. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (SheetTemplate sheet : TEMPLATE.sheets()) {
      List<String> said =
          sheet.rows().stream()
              .flatMap(RowTemplate::withCells)
              .flatMap(row -> said(row).stream())
              .filter(s -> !s.isEmpty())
              .toList();
      if (!said.isEmpty()) {
        lines.add("== " + sheet.name());
        lines.addAll(said);
      }
    }
    return lines;
  }

  private List<String> said(RowTemplate row) {
    if (row instanceof SentenceTemplate sentence) {
      return List.of(words.say(sentence.sentence()));
    } else if (row instanceof LineTemplate line && line.text().isPresent()) {
      return labelled(line.label(), words.value(line.name()));
    } else if (row instanceof CheckTemplate check) {
      return List.of(failure(check));
    } else if (row instanceof TableTemplate table) {
      return table.columns().stream()
          .filter(column -> column.text().isPresent())
          .flatMap(column -> words.column(column.name()).orElseThrow().stream())
          .map(Objects::toString)
          .distinct()
          .toList();
    }
    return List.of();
  }

  private static List<String> labelled(String label, Optional<Object> said) {
    String text = said.map(Objects::toString).orElse("");
    return text.isEmpty() ? List.of() : List.of(label + ": " + text);
  }

  private String failure(CheckTemplate check) {
    return words.value(check.name()).filter(Double.valueOf(0)::equals).isPresent()
        ? check.level() + ": " + words.say(Form.Check.of(check).sentence())
        : "";
  }
}
