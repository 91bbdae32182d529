package frillbook.press;

import frillbook.measure.LengthUnit;
import frillbook.template.Form;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A workbook in one length unit that is finished but for what differs from plan to plan.
 *
 * @param form what it asks for and answers
 * @param cells what each calculated cell is, in the order of the slots
 * @param parts of the package, in the order in which they are written
 */
public record Press(LengthUnit unit, Form form, List<CellSource> cells, List<Part> parts) {
  /** Larger ones take longer and save little: the benchmark tells. */
  public static final int DEFLATE_LEVEL = 5;

  private static final String EMPTY_CELL = "/>";

  public Press {
    cells = List.copyOf(cells);
    parts = List.copyOf(parts);
  }

  /**
   * What a workbook is filled with.
   *
   * @param cells a Double or a String for each of {@link Press#cells}
   * @param inputs a Double or a String by name, as cells show it; null or nothing for an empty cell
   */
  public record Filling(Object[] cells, Map<String, Object> inputs, Paper paper, Colour colour) {
    private Object input(Form form, Slot slot) {
      return inputs.get(form.inputs().get(slot.which()).name());
    }
  }

  /** The values that {@code engine} says, with the inputs they follow from. */
  public Filling filling(
      CellValues engine, Map<String, Object> inputs, Paper paper, Colour colour) {
    Object[] values = new Object[cells.size()];
    for (int index = 0; index < values.length; index++) {
      CellSource source = cells.get(index);
      values[index] =
          engine
              .value(source)
              .orElseThrow(() -> new IllegalStateException("the plan does not say " + source));
    }
    Map<String, Object> shown = new HashMap<>(inputs);
    shown.replaceAll(form.vocabulary().words()::shown);
    return new Filling(values, shown, paper, colour);
  }

  /** The same in our own colour. */
  public Filling filling(CellValues engine, Map<String, Object> inputs, Paper paper) {
    return filling(engine, inputs, paper, Colour.OURS);
  }

  /** The bytes of the .xlsx file; the same filling gives the same bytes. */
  public byte[] fill(Filling filling) {
    return fill(filling, DEFLATE_LEVEL);
  }

  /**
   * The same.
   *
   * @param level of deflating, 1 to 9
   */
  byte[] fill(Filling filling, int level) {
    try (PackageWriter out = new PackageWriter(level)) {
      XmlBuffer text = new XmlBuffer();
      for (Part part : parts) {
        if (part instanceof Part.Finished finished) {
          out.add(finished);
        } else {
          Part.Slotted sheet = (Part.Slotted) part;
          text.clear();
          fill(sheet, filling, text);
          out.add(sheet.name(), text);
        }
      }
      return out.finished();
    }
  }

  private void fill(Part.Slotted sheet, Filling filling, XmlBuffer text) {
    int from = 0;
    for (Slot slot : sheet.slots()) {
      text.copy(sheet.text(), from, slot.open());
      fill(slot, filling, sheet.text(), text);
      from = slot.close();
    }
    text.copy(sheet.text(), from, sheet.text().length);
  }

  private void fill(Slot slot, Filling filling, byte[] sheet, XmlBuffer text) {
    switch (slot.kind()) {
      case CELL -> {
        Object value = filling.cells()[slot.which()];
        text.markup(value instanceof String ? " t=\"str\"" : "");
        text.copy(sheet, slot.open(), slot.close());
        put(value, text);
      }
      case NUMBER -> number(filling.input(form, slot), text);
      case WORDS_CELL -> {
        if (words(filling.input(form, slot)).isEmpty()) {
          text.markup(EMPTY_CELL);
        } else {
          text.copy(sheet, slot.open(), slot.close());
        }
      }
      case WORDS -> shared(words(filling.input(form, slot)), text);
      case PAPER -> text.digits(filling.paper().code());
      case FILL -> text.markup(filling.colour().fill());
      case EDGE -> text.markup(filling.colour().line());
    }
  }

  private static void number(Object value, XmlBuffer text) {
    if (value instanceof Double number) {
      text.markup("><v>");
      StoredNumber.write(text, number);
      text.markup("</v></c>");
    } else {
      text.markup(EMPTY_CELL);
    }
  }

  private static String words(Object value) {
    return value == null ? "" : (String) value;
  }

  /** Spaces at either end would be lost where nobody asks to keep them. */
  private static void shared(String words, XmlBuffer text) {
    text.markup(words.equals(words.strip()) ? "<t>" : "<t xml:space=\"preserve\">");
    text.words(words);
    text.markup("</t>");
  }

  private static void put(Object value, XmlBuffer text) {
    text.markup("<v>");
    if (value instanceof Double number) {
      StoredNumber.write(text, number);
    } else {
      text.words((String) value);
    }
    text.markup("</v>");
  }
}
