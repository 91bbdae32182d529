package frillbook.pressing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Says the XML of a sheet as briefly as it deflates. In which order attributes stand means nothing;
 * deflated, a calculated cell is shorter where the place that it alone has stands behind the look
 * it shares with those above.
 */
final class SheetText {
  /** The library ends every element on its own, which takes room and time in a long table. */
  private static final Pattern HOLDS_NOTHING = Pattern.compile("(<([a-zA-Z]+)(?: [^<>]*)?)></\\2>");

  private static final Pattern PLACE_THEN_LOOK =
      Pattern.compile("<c (r=\"[A-Z]+[0-9]+\") (s=\"[0-9]+\")( t=\"[a-z]+\")?><f");

  private static final Pattern OWN_HEIGHT =
      Pattern.compile("(<row r=\"[0-9]+\") customHeight=\"true\" (ht=\"[0-9.]+\")");

  private static final Pattern COLUMN =
      Pattern.compile(
          "<col customWidth=\"true\" min=\"([0-9]+)\" max=\"([0-9]+)\" width=\"([0-9.]+)\"/>");

  /** Which part of a sheet the first cell is selected in makes no difference to a reader. */
  private static final Pattern PANE =
      Pattern.compile(
          "(<pane ySplit=\"[0-9]+)\\.0(\"[^>]*) activePane=\"bottomLeft\"/>"
              + "<selection pane=\"bottomLeft\"/>");

  private static final Pattern DIMENSION = Pattern.compile("<dimension ref=\"[A-Z0-9:]*\"/>");

  private static final Pattern VALIDATION = Pattern.compile("<dataValidation [^>]*>");

  /** What holds for a validation that says nothing else (ISO/IEC 29500-1, 18.3.1.32). */
  private static final Pattern DEFAULTS =
      Pattern.compile(" (?:errorStyle=\"stop\"|operator=\"between\"|showDropDown=\"false\")");

  /** Of an attribute; the words of a cell are followed by the end of its element. */
  private static final Pattern TRUTH = Pattern.compile("( [a-zA-Z]+=\")(true|false)(?=\"[^<>]*>)");

  private SheetText() {}

  static String brief(String sheet) {
    String ended = HOLDS_NOTHING.matcher(sheet).replaceAll("$1/>");
    String looked = PLACE_THEN_LOOK.matcher(ended).replaceAll("<c $2 $1$3><f");
    String high = OWN_HEIGHT.matcher(looked).replaceAll("$1 $2 customHeight=\"1\"");
    return truths(validations(view(columns(high))));
  }

  /** Programs find out for themselves how far a sheet reaches. */
  private static String view(String sheet) {
    String unmeasured = DIMENSION.matcher(sheet).replaceFirst("");
    return PANE.matcher(unmeasured).replaceFirst("$1$2/>");
  }

  private static String validations(String sheet) {
    return VALIDATION
        .matcher(sheet)
        .replaceAll(
            each -> Matcher.quoteReplacement(DEFAULTS.matcher(each.group()).replaceAll("")));
  }

  private static String truths(String sheet) {
    return TRUTH
        .matcher(sheet)
        .replaceAll(each -> each.group(1) + (each.group(2).equals("true") ? "1" : "0"));
  }

  /** Neighbouring columns of one width are said together. */
  private static String columns(String sheet) {
    StringBuilder brief = new StringBuilder();
    Matcher column = COLUMN.matcher(sheet);
    int copied = 0;
    while (column.find()) {
      String first = column.group(1);
      String width = column.group(3);
      int begin = column.start();
      String last;
      int end;
      do {
        last = column.group(2);
        end = column.end();
      } while (column.find() && column.start() == end && column.group(3).equals(width));
      brief.append(sheet, copied, begin).append(column(first, last, width));
      copied = end;
      column.region(end, sheet.length());
    }
    return brief.append(sheet, copied, sheet.length()).toString();
  }

  private static String column(String first, String last, String width) {
    return "<col customWidth=\"true\" min=\""
        + first
        + "\" max=\""
        + last
        + "\" width=\""
        + width
        + "\"/>";
  }
}
