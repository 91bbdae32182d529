package frillbook.workbook;

import frillbook.brief.LengthUnit;
import frillbook.brief.Units;
import frillbook.press.Paper;
import frillbook.template.InputTemplate;
import java.util.Map;

/**
 * What is settled when a workbook is made.
 *
 * @param units of every length and every sum in it
 * @param inputs values by input name, a Double for a number and a String for a choice; an input
 *     that is not named keeps the template's default
 * @param paper it is printed on
 */
public record WorkbookSetting(Units units, Map<String, Object> inputs, Paper paper) {
  public WorkbookSetting {
    inputs = Map.copyOf(inputs);
  }

  LengthUnit unit() {
    return units.length();
  }

  /** The value the input's cell starts with. */
  Object value(InputTemplate input) {
    return inputs.getOrDefault(input.name(), input.preset(unit()));
  }

  /** The words a template's unit stands for; nothing for {@code -}. */
  String unitText(String unitInTemplate) {
    return unitInTemplate.equals("-") ? "" : say(unitInTemplate);
  }

  /** A template's text with the units filled in. */
  String say(String text) {
    return units.say(text);
  }
}
