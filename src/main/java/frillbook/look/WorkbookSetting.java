package frillbook.look;

import frillbook.measure.LengthUnit;
import frillbook.press.Colour;
import frillbook.press.Paper;
import frillbook.template.InputTemplate;
import frillbook.wording.CodeWord;
import java.util.Map;

/**
 * What is settled when a workbook is made.
 *
 * @param unit of every length in it
 * @param inputs values by input name, a Double for a number, a String for words and for the code of
 *     a choice; an input that is not named keeps the template's default
 * @param paper it is printed on
 * @param colour of the fabric in its pictures
 */
public record WorkbookSetting(
    LengthUnit unit, Map<String, Object> inputs, Paper paper, Colour colour) {
  public WorkbookSetting {
    inputs = Map.copyOf(inputs);
  }

  /** The same in our own colour. */
  public WorkbookSetting(LengthUnit unit, Map<String, Object> inputs, Paper paper) {
    this(unit, inputs, paper, Colour.OURS);
  }

  /** The value the input's cell starts with: of a choice its word. */
  public Object value(InputTemplate input) {
    Object value = inputs.getOrDefault(input.name(), input.preset(unit()));
    return input.choices().stream()
        .filter(choice -> choice.code().equals(value))
        .findFirst()
        .<Object>map(CodeWord::word)
        .orElse(value);
  }

  /** A template's text with the units of length filled in. */
  public String say(String text) {
    return unit.say(text);
  }
}
