package frillbook.look;

import frillbook.measure.LengthUnit;
import frillbook.press.Paper;
import frillbook.template.InputTemplate;
import java.util.Map;

/**
 * What is settled when a workbook is made.
 *
 * @param unit of every length in it
 * @param inputs values by input name, a Double for a number and a String for words; an input that
 *     is not named keeps the template's default
 * @param paper it is printed on
 */
public record WorkbookSetting(LengthUnit unit, Map<String, Object> inputs, Paper paper) {
  public WorkbookSetting {
    inputs = Map.copyOf(inputs);
  }

  /** The value the input's cell starts with. */
  public Object value(InputTemplate input) {
    return inputs.getOrDefault(input.name(), input.preset(unit()));
  }

  /** A template's text with the units of length filled in. */
  public String say(String text) {
    return unit.say(text);
  }
}
