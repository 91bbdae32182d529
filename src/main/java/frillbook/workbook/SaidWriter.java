package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.measure.LengthUnit;
import frillbook.measure.Scales;
import frillbook.template.WorkbookTemplate;
import frillbook.wording.MeasureStyle;
import frillbook.wording.Wording;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/**
 * Writes the lengths and weights that sentences say: what each is; how many sixteenths of an inch,
 * millimetres, tenths of an ounce or grams; and the words, which every sentence quotes.
 */
final class SaidWriter {
  private static final String FRACTION =
      "CHOOSE(MOD(%1$s,16)+1,\"\",\" 1/16\",\" 1/8\",\" 3/16\",\" 1/4\",\" 5/16\",\" 3/8\",\" 7/16\""
          + ",\" 1/2\",\" 9/16\",\" 5/8\",\" 11/16\",\" 3/4\",\" 13/16\",\" 7/8\",\" 15/16\")";

  /** Sixteenths in words, a blank before them; 0 where there is none. */
  private static final String INCHES =
      "IF(%1$s=0,\" 0\",IF(%1$s<16,\"\",\" \"&INT(%1$s/16))&" + FRACTION + ")";

  private static final String TENTHS = "FIXED(%1$s/10,1-(MOD(%1$s,10)=0),TRUE)";

  /** Of so many parts those whole long units, then the rest, if there is one. */
  private static final String LONG =
      "TRIM(IF(%1$s<%2$s,\"\",INT(%1$s/%2$s)&\"%3$s\")"
          + "&IF(AND(%1$s>0,MOD(%1$s,%2$s)=0),\"\",%4$s&\"%5$s\"))";

  private static final String POUNDS =
      "INT(%1$s/160)&\" lb\"&IF(MOD(%1$s,160)=0,\"\",\" \"&MOD(%1$s,160)/10&\" oz\")";

  private final Page page;
  private final boolean inch;

  SaidWriter(Page page) {
    this.page = page;
    this.inch = page.setting().unit() == LengthUnit.INCH;
  }

  void said(int first, WorkbookTemplate template) {
    int row = first;
    for (Wording.Measure measure : template.measures()) {
      String parts = new CellReference(row, SheetPlaces.VALUE, false, true).formatAsString();
      text(row, page.setting().say(template.label(measure.name())));
      page.formula(row, SheetPlaces.VALUE, parts(measure), page.styles().of(Look.DATA));
      words(row, SheetPlaces.SAID, parts, brief(measure, parts));
      if (measure.isLong()) {
        words(row, SheetPlaces.LONG_SAID, parts, inch ? yards(parts) : metres(parts));
      }
      row++;
    }
  }

  private void text(int row, String label) {
    page.text(row, SheetPlaces.LABEL, label, left());
  }

  private void words(int row, int column, String parts, String said) {
    page.formula(row, column, "IF(" + parts + "=\"\",\"\"," + said + ")", left());
  }

  private XSSFCellStyle left() {
    return page.styles().of(Look.DATA, NumberFormats.GENERAL, HorizontalAlignment.LEFT);
  }

  private String parts(Wording.Measure measure) {
    boolean weighed = measure.style() == MeasureStyle.WEIGHT;
    String ounces = "/" + FormulaTranslation.number(Scales.GRAMS_PER_OUNCE) + "*10";
    String in = weighed ? (inch ? ounces : "") : inch ? "*16" : "*10";
    String name = measure.name();
    return "IF(ISNUMBER(" + name + "),ROUND(MAX(0," + name + ")" + in + ",4),\"\")";
  }

  private String brief(Wording.Measure measure, String parts) {
    if (measure.style() == MeasureStyle.WEIGHT) {
      return inch ? ounces(parts) : whole(parts) + "&\" g\"";
    }
    return inch
        ? "TRIM(" + String.format(INCHES, sixteenths(parts)) + ")"
        : String.format(TENTHS, whole(parts));
  }

  private static String whole(String parts) {
    return "ROUND(" + parts + ",0)";
  }

  /** Eighths, unless it is short or a whole number of sixteenths. */
  private static String sixteenths(String parts) {
    return String.format("IF(OR(%1$s<64,MOD(%1$s,1)=0),ROUND(%1$s,0),2*ROUND(%1$s/2,0))", parts);
  }

  private static String yards(String parts) {
    String said = sixteenths(parts);
    String rest = String.format(INCHES, "MOD(" + said + ",576)");
    return String.format(LONG, said, "576", " yd", rest, " in");
  }

  private static String metres(String parts) {
    String said = whole(parts);
    String rest = "\" \"&" + String.format(TENTHS, "MOD(" + said + ",1000)");
    return String.format(LONG, said, "1000", " m", rest, " cm");
  }

  /** From a pound on whole ounces. */
  private static String ounces(String parts) {
    String said = String.format("IF(%1$s<160,ROUND(%1$s,0),10*ROUND(%1$s/10,0))", parts);
    String few = String.format(TENTHS, said) + "&\" oz\"";
    return "IF(" + said + "<160," + few + "," + String.format(POUNDS, said) + ")";
  }
}
