package frillbook.chart;

import frillbook.look.Look;
import frillbook.press.Colour;
import frillbook.template.ChartLine;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTSRgbColor;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTSolidColorFillProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;
import org.openxmlformats.schemas.drawingml.x2006.main.STLineCap;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetLineDashVal;
import org.openxmlformats.schemas.drawingml.x2006.main.STTextVerticalType;

/** Lines, fills and letters of charts: dark on white, told apart by weight and dash. */
public final class ChartInk {
  /** Size of letters in a chart, in points. */
  static final double LETTERS = 9;

  static final String PAPER = "FFFFFF";

  /** How much the line round petals covers what is under it. */
  private static final double LINE_COVERS = .6;

  /** How much a tint does. */
  private static final double TINT_COVERS = .22;

  /** In the schema a share is told in thousandths of a percent. */
  private static final int WHOLE = 100_000;

  private static final int EMU_PER_POINT = 12_700;

  /** In the schema a letter's size is told in hundredths of a point. */
  private static final int SIZE_STEPS = 100;

  /** A quarter turn to the left, in 60000ths of a degree. */
  private static final int UPWARDS = -5_400_000;

  private ChartInk() {}

  /** Lengths of drawn objects are told in English Metric Units, 914400 to the inch. */
  static long emu(double points) {
    return Math.round(points * EMU_PER_POINT);
  }

  /** A series' line; LibreOffice draws none unless it is told weight and colour. */
  static void stroke(CTShapeProperties shape, ChartLine line) {
    if (line == ChartLine.NONE) {
      shape.addNewLn().addNewNoFill();
      return;
    }
    CTLineProperties stroke = stroke(shape, weight(line), Look.TEXT);
    stroke.setCap(STLineCap.RND);
    if (line == ChartLine.DASHED || line == ChartLine.DOTTED) {
      stroke.addNewPrstDash().setVal(dash(line));
    }
    stroke.addNewRound();
  }

  /** A line that what is drawn over it shows through, cut off square where it ends. */
  static void tint(CTShapeProperties shape, Colour colour) {
    CTLineProperties stroke = shape.addNewLn();
    stroke.setW((int) emu(weight(ChartLine.TINT)));
    stroke.setCap(STLineCap.FLAT);
    paint(stroke.addNewSolidFill(), colour.line(), TINT_COVERS);
    stroke.addNewRound();
  }

  private static STPresetLineDashVal.Enum dash(ChartLine line) {
    return line == ChartLine.DASHED ? STPresetLineDashVal.DASH : STPresetLineDashVal.SYS_DOT;
  }

  /** In points. */
  private static double weight(ChartLine line) {
    return switch (line) {
      case NONE -> 0;
      case THIN -> 0.75;
      case MEDIUM, DASHED, DOTTED -> 1.5;
      case THICK -> 2.5;
      case TINT -> 5;
    };
  }

  /** A hairline for axes and the lines numbers are read along. */
  static void rule(CTShapeProperties shape, String colour) {
    stroke(shape, 0.5, colour);
  }

  private static CTLineProperties stroke(CTShapeProperties shape, double weight, String colour) {
    CTLineProperties stroke = shape.addNewLn();
    stroke.setW((int) emu(weight));
    stroke.addNewSolidFill().addNewSrgbClr().setVal(rgb(colour));
    return stroke;
  }

  /**
   * The fill and the line of petals: both show through, so that it never matters which is on top.
   */
  static void petal(CTShapeProperties shape, ChartLine line, double fill, Colour colour) {
    paint(shape.addNewSolidFill(), colour.fill(), fill);
    if (line == ChartLine.NONE) {
      shape.addNewLn().addNewNoFill();
    } else {
      CTLineProperties stroke = shape.addNewLn();
      stroke.setW((int) emu(weight(line)));
      paint(stroke.addNewSolidFill(), colour.line(), LINE_COVERS);
    }
  }

  private static void paint(CTSolidColorFillProperties paint, String colour, double covers) {
    CTSRgbColor ink = paint.addNewSrgbClr();
    ink.setVal(rgb(colour));
    ink.addNewAlpha().setVal((int) Math.round(covers * WHOLE));
  }

  static void fill(CTShapeProperties shape, String colour) {
    shape.addNewSolidFill().addNewSrgbClr().setVal(rgb(colour));
  }

  private static byte[] rgb(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
  }

  /** The letters of everything in {@code body}. */
  static void letters(CTTextBody body) {
    body.addNewBodyPr();
    CTTextParagraph paragraph = body.addNewP();
    letters(paragraph.addNewPPr().addNewDefRPr());
    paragraph.addNewEndParaRPr().setLang("en-US");
  }

  private static void letters(CTTextCharacterProperties letters) {
    letters.setSz((int) (LETTERS * SIZE_STEPS));
    letters.setB(false);
    letters.addNewSolidFill().addNewSrgbClr().setVal(rgb(Look.TEXT));
    letters.addNewLatin().setTypeface(Look.FACE);
  }

  /** One line of text, from left to right or upwards. */
  static void words(CTTextBody body, String text, boolean upwards) {
    var frame = body.addNewBodyPr();
    if (upwards) {
      frame.setRot(UPWARDS);
      frame.setVert(STTextVerticalType.HORZ);
    }
    var run = body.addNewP().addNewR();
    letters(run.addNewRPr());
    run.setT(text);
  }
}
