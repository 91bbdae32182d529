package frillbook.look;

import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * How the kinds of cells look.
 *
 * <p>Deep ink on white, fine rules, one typeface. Nothing is told by colour alone: inputs have a
 * heavy frame besides their tint, cautions a rule and the word, the flag and faults their words.
 * Every colour of text has a contrast of at least 4.5:1 to what it stands on (WCAG 2.1, 1.4.3).
 */
public enum Look {
  TITLE(18, true, Look.INK),
  LEAD(10.5, false, Look.SOFT),
  SECTION(12, true, Look.INK),
  NOTE(10, false, Look.TEXT),
  CAUTION(10, false, Look.TEXT),
  MESSAGE(10, false, Look.TEXT),
  CHART_TITLE(10.5, true, Look.INK),
  LABEL(10, false, Look.TEXT),
  VALUE(10, false, Look.TEXT),
  INPUT(10, true, Look.INPUT_INK),
  /** An input that is a person's own words. */
  INPUT_WORDS(10, false, Look.INPUT_INK),
  HEADLINE_LABEL(10, true, Look.INK),
  HEADLINE(12, true, Look.INK),
  UNIT(9, false, Look.SOFT),
  /** What an input may hold, while it holds something else. */
  REFUSAL(9, true, Look.SOFT),
  REMARK(9, false, Look.SOFT),
  /** A remark that runs on to the right, over cells that are empty. */
  ASIDE(9, false, Look.SOFT),
  SENTENCE(10, false, Look.TEXT),
  /** What is wrong, in a list. */
  VERDICT(9.5, false, Look.TEXT),
  HEADER(9.5, true, Look.INK),
  HEADER_UNIT(9, false, Look.SOFT),
  WORD_HEADER(9.5, true, Look.INK),
  DATA(10, false, Look.TEXT),
  /** Of a table that is read at a machine. */
  LARGE_DATA(12, false, Look.TEXT),
  LARGEST_DATA(22, true, Look.TEXT),
  PLAIN(10, false, Look.TEXT),
  /** Leads to another sheet. */
  LINK(9, false, Look.LINK_INK),
  LEADING_REMARK(9, false, Look.LINK_INK),
  /** To be ticked, or filled by hand. */
  TICK(12, true, Look.INPUT_INK),
  MEASURED(12, true, Look.INPUT_INK),
  NUMBER(10, false, Look.SOFT),
  STEP(10.5, false, Look.TEXT),
  FIGURE(14, true, Look.INK),
  /** The page that is given to a client. */
  COVER(26, true, Look.INK),
  SUBTITLE(13, false, Look.SOFT),
  MAKER(11, true, Look.INK),
  DATE(10, false, Look.SOFT),
  CONTACT(9, false, Look.SOFT),
  FACT_LABEL(8.5, false, Look.SOFT),
  FACT(10.5, false, Look.TEXT),
  /** A bar over a price. */
  CARD_TOP(4, false, Look.TEXT),
  CARD_NAME(12, true, Look.INK),
  CARD_WORDS(9, false, Look.SOFT),
  CARD_PRICE(22, true, Look.INK),
  CARD_LINE(10, false, Look.TEXT),
  CARD_END(10, false, Look.TEXT),
  SMALL_HEAD(10.5, true, Look.INK),
  /** A rule to work by. */
  MAXIM(12, true, Look.INK),
  SMALL(8.5, false, Look.TEXT),
  SIGNATURE(10, false, Look.TEXT),
  SIGN_LABEL(8.5, false, Look.SOFT);

  public static final String FACE = "Arial";
  public static final String INK = "17404A";
  public static final String TEXT = "1F2933";
  static final String SOFT = "46525E";
  static final String RULE = "17404A";
  public static final String HAIRLINE = "D5DADF";
  public static final String CREAM = "FFEFB8";
  public static final String INPUT_EDGE = "7A5E12";
  static final String INPUT_INK = "1F3F7A";
  public static final String ALARM = "8B1E0F";
  public static final String ALARM_TINT = "FBF1EC";

  /** Behind the white words of the flag and of faults. */
  public static final String READY = "1F6B45";

  public static final String LOOK_AGAIN = "8A5A00";
  public static final String STOP = ALARM;
  public static final String WHITE = "FFFFFF";
  static final String LINK_INK = "1F5A8A";
  public static final String EDGE = "7C8B92";

  private final double size;
  private final boolean bold;
  private final String colour;

  Look(double size, boolean bold, String colour) {
    this.size = size;
    this.bold = bold;
    this.colour = colour;
  }

  /** Letter size in points. */
  public double size() {
    return size;
  }

  public boolean bold() {
    return bold;
  }

  /** Of the letters, as RRGGBB. */
  public String colour() {
    return colour;
  }

  /** Whether long text goes on in the next line. */
  public boolean wraps() {
    return switch (this) {
      case SECTION, VALUE, INPUT, HEADLINE, UNIT, ASIDE, HEADER_UNIT, WORD_HEADER, DATA -> false;
      case LARGE_DATA, LARGEST_DATA -> false;
      case LINK, TICK, MEASURED, NUMBER, FIGURE -> false;
      case COVER, SUBTITLE, MAKER, DATE, SIGNATURE, CARD_TOP, CARD_END -> false;
      case CARD_NAME, CARD_PRICE, CARD_LINE -> false;
      default -> true;
    };
  }

  /** Keeps the cell's text off its neighbour, in steps of three spaces. */
  public int indent() {
    return switch (this) {
      case INPUT, INPUT_WORDS, CAUTION, UNIT, REMARK, LEADING_REMARK, ASIDE, REFUSAL -> 1;
      case SENTENCE, WORD_HEADER -> 1;
      case NUMBER, FIGURE -> 1;
      case CARD_NAME, CARD_WORDS, CARD_PRICE, CARD_LINE, CARD_END -> 1;
      default -> 0;
    };
  }

  public HorizontalAlignment across() {
    return switch (this) {
      case VALUE, INPUT, HEADLINE, HEADER, HEADER_UNIT -> HorizontalAlignment.RIGHT;
      case DATA, LARGE_DATA, LARGEST_DATA -> HorizontalAlignment.RIGHT;
      case NUMBER, FIGURE, DATE -> HorizontalAlignment.RIGHT;
      case TICK, MEASURED -> HorizontalAlignment.CENTER;
      default -> HorizontalAlignment.LEFT;
    };
  }

  public VerticalAlignment upright() {
    return switch (this) {
      case SECTION, HEADER, WORD_HEADER, FACT_LABEL, SMALL_HEAD, SIGNATURE ->
          VerticalAlignment.BOTTOM;
      case TITLE, LEAD, VERDICT, SUBTITLE, FACT, CARD_WORDS, SMALL, SIGN_LABEL ->
          VerticalAlignment.TOP;
      default -> VerticalAlignment.CENTER;
    };
  }

  /** Whether it leads to another sheet, and is underlined. */
  public boolean leads() {
    return this == LINK || this == LEADING_REMARK;
  }

  /** The rule under the cell. */
  public BorderStyle rule() {
    return switch (this) {
      case SECTION, HEADER_UNIT, WORD_HEADER -> BorderStyle.MEDIUM;
      case LABEL, VALUE, HEADLINE_LABEL, HEADLINE, UNIT, REMARK, LEADING_REMARK, ASIDE, REFUSAL ->
          BorderStyle.THIN;
      case SENTENCE, NUMBER, STEP, FIGURE, CONTACT, SIGNATURE, CARD_END -> BorderStyle.THIN;
      default -> BorderStyle.NONE;
    };
  }

  /** Whether letters get smaller where one line has no room for them. */
  public boolean shrinks() {
    return switch (this) {
      case COVER, SUBTITLE, MAKER, CARD_NAME, CARD_PRICE, CARD_LINE, FIGURE -> true;
      case LARGE_DATA, LARGEST_DATA -> true;
      default -> false;
    };
  }

  /** The rule over the cell. */
  public BorderStyle topRule() {
    return switch (this) {
      case FACT_LABEL, SMALL_HEAD -> BorderStyle.THIN;
      default -> BorderStyle.NONE;
    };
  }

  /** The rules left and right of the cell. */
  public BorderStyle sideRule() {
    return switch (this) {
      case CARD_NAME, CARD_WORDS, CARD_PRICE, CARD_LINE, CARD_END -> BorderStyle.THIN;
      default -> BorderStyle.NONE;
    };
  }

  /** What the cell stands on; nothing for paper. */
  public Optional<String> ground() {
    return switch (this) {
      case INPUT, INPUT_WORDS, TICK, MEASURED -> Optional.of(CREAM);
      case CAUTION -> Optional.of(ALARM_TINT);
      case CARD_TOP -> Optional.of(INK);
      default -> Optional.empty();
    };
  }

  /** Whether a person writes into it. */
  public boolean isFilled() {
    return switch (this) {
      case INPUT, INPUT_WORDS, TICK, MEASURED, SIGNATURE -> true;
      default -> false;
    };
  }

  public String ruleColour() {
    return switch (this) {
      case CONTACT, SIGNATURE, CARD_END -> EDGE;
      default -> rule() == BorderStyle.MEDIUM ? RULE : HAIRLINE;
    };
  }
}
