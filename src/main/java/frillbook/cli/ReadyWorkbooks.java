package frillbook.cli;

import frillbook.measure.LengthUnit;
import frillbook.press.Colour;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import java.nio.file.Path;

/** Makes the workbooks that lie beside the program, for those who have no Java. */
public final class ReadyWorkbooks {
  private ReadyWorkbooks() {}

  /**
   * Makes them anew.
   *
   * @param args the folder they lie in
   */
  public static void main(String[] args) {
    for (LengthUnit unit : LengthUnit.values()) {
      PlanWorkbook.put(made(unit), Path.of(args[0], name(unit)), true);
    }
  }

  static String name(LengthUnit unit) {
    return switch (unit) {
      case INCH -> "spiral-frill-inch-letter.xlsx";
      case CM -> "spiral-frill-cm-a4.xlsx";
    };
  }

  /** The workbook in {@code unit} with its presets. */
  static byte[] made(LengthUnit unit) {
    Press press = PackagedPress.of(unit);
    return MadeWorkbook.pressed(
            press, press.form().presets(unit), Paper.usualFor(unit), Colour.OURS)
        .bytes();
  }
}
