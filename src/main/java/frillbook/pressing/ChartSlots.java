package frillbook.pressing;

import frillbook.press.Part;
import frillbook.press.Slot;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds in the XML of a chart where the colour of the fabric stands: what shows through has it. */
final class ChartSlots {
  /** Fills, and lines, which stand in an element of their own. */
  private static final Pattern SHOWS_THROUGH =
      Pattern.compile(
          "(<a:ln[^>]*>)?<a:solidFill><a:srgbClr val=\"([0-9A-F]{6})\"><a:alpha val=\"[0-9]+\"/>");

  private ChartSlots() {}

  static List<Slot> of(byte[] xml) {
    // One character for each byte, so that places in the text are places in the file.
    Matcher found = SHOWS_THROUGH.matcher(new String(xml, StandardCharsets.ISO_8859_1));
    List<Slot> slots = new ArrayList<>();
    while (found.find()) {
      Slot.Kind kind = found.group(1) == null ? Slot.Kind.FILL : Slot.Kind.EDGE;
      slots.add(new Slot(kind, found.start(2), found.end(2), 0));
    }
    return slots;
  }

  static Part.Slotted slotted(String name, byte[] xml) {
    return new Part.Slotted(name, xml, of(xml));
  }
}
