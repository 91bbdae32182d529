package frillbook.pressing;

import frillbook.press.Part;
import frillbook.press.Slot;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds in the XML of a sheet what differs from plan to plan.
 *
 * @param cells which calculated cell, from 0, stands at an address such as {@code B7}
 * @param inputs which input, from 0, stands at an address
 */
public record SheetSlots(Map<String, Integer> cells, Map<String, Integer> inputs) {
  private static final Pattern CELL_OR_PAPER =
      Pattern.compile("<c (?:s=\"[0-9]+\" )?r=\"([A-Z]+[0-9]+)\"[^>]*>|paperSize=\"([0-9]+)\"");

  private static final String END = "</c>";

  /** Says that a cell's words are among those that all sheets share. */
  private static final String SHARED = " t=\"s\"";

  /**
   * The part of a sheet with its slots.
   *
   * @param xml of the sheet, its calculated cells and inputs without values
   */
  Part.Slotted of(String name, byte[] xml) {
    // One character for each byte, so that places in the text are places in the file.
    String text = new String(xml, StandardCharsets.ISO_8859_1);
    List<Slot> slots = new ArrayList<>();
    Matcher found = CELL_OR_PAPER.matcher(text);
    while (found.find()) {
      if (found.group(1) == null) {
        slots.add(new Slot(Slot.Kind.PAPER, found.start(2), found.end(2), 0));
      } else {
        cell(found, text, slots);
      }
    }
    return new Part.Slotted(name, xml, slots);
  }

  private void cell(Matcher start, String text, List<Slot> slots) {
    boolean empty = text.charAt(start.end() - 2) == '/';
    int open = start.end() - (empty ? 2 : 1);
    int end = text.indexOf(END, open);
    String address = start.group(1);
    if (inputs.containsKey(address)) {
      int last = empty ? start.end() : end + END.length();
      slots.add(input(start, text, open, last, inputs.get(address)));
    } else if (text.startsWith("<f", open + 1)) {
      Integer which = cells.get(address);
      if (which == null) {
        throw new IllegalStateException("no template says what " + address + " calculates");
      }
      slots.add(new Slot(Slot.Kind.CELL, open, end, which));
    }
  }

  private static Slot input(Matcher start, String text, int open, int end, int which) {
    int kind = text.indexOf(SHARED, start.start());
    return kind > 0 && kind < start.end()
        ? new Slot(Slot.Kind.WORDS_CELL, kind, end, which)
        : new Slot(Slot.Kind.NUMBER, open, end, which);
  }
}
