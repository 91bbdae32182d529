package frillbook.pressing;

import frillbook.press.Part;
import frillbook.press.Slot;
import frillbook.template.InputTemplate;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the words of inputs in the part of the package that keeps the words of all cells. They are
 * written with a mark in their place, one of its own for each input, and found by it.
 */
public final class SharedWords {
  static final String PART = "xl/sharedStrings.xml";

  private SharedWords() {}

  /** What stands for the words of {@code input}. */
  static String marked(InputTemplate input) {
    return "words of " + input.name();
  }

  static Part.Slotted slotted(byte[] xml, List<InputTemplate> inputs) {
    // One character for each byte, so that places in the text are places in the file.
    String text = new String(xml, StandardCharsets.ISO_8859_1);
    List<Slot> slots = new ArrayList<>();
    for (int index = 0; index < inputs.size(); index++) {
      if (inputs.get(index).isWords()) {
        String mark = "<t>" + marked(inputs.get(index)) + "</t>";
        int open = text.indexOf(mark);
        slots.add(new Slot(Slot.Kind.WORDS, open, open + mark.length(), index));
      }
    }
    slots.sort(Comparator.comparingInt(Slot::open));
    return new Part.Slotted(PART, xml, slots);
  }
}
