package frillbook.template;

import java.util.List;
import java.util.Locale;

/** What a workbook says of itself, beside its sheets. */
public enum Phrase {
  /** A paragraph that must not be missed. */
  CAUTION("text"),
  /** What may be typed, by the kind of input; of money without a unit, like a share. */
  A_NUMBER("from", "to", "unit"),
  A_BARE_NUMBER("from", "to"),
  A_COUNT("from", "to"),
  A_TEXT("most"),
  A_CURRENCY,
  A_CHOICE("words"),
  /** The same as a sentence, where the input is not beside it. */
  OF_INPUT("label", "text"),
  /** Over the same where a program refuses what is typed. */
  NOT_ACCEPTED,
  /** Said of what has been checked and is well. */
  FINE,
  /** Said of what cannot be judged yet. */
  NOT_CHECKED,
  /** Said where nothing is wrong anywhere. */
  ALL_WELL,
  /** Said behind the first thing that is wrong. */
  FIRST_OF("count"),
  /** Said where more is wrong than there is room for. */
  MORE("count"),
  /** A failed check, by its level. */
  STOP,
  LOOK_AGAIN,
  /** In the box beside a step that is done. */
  TICKED,
  /** A flag that is 1, and one that is 0. */
  YES_WORD,
  NO_WORD,
  /** Over the columns of the list of all names. */
  LABEL_HEAD,
  NAME_HEAD,
  UNIT_HEAD,
  MEANING_HEAD,
  SHEET_HEAD,
  /** Over the points of a client's picture, beside the page. */
  PICTURE_POINTS;

  private final List<String> variables;

  Phrase(String... variables) {
    this.variables = List.of(variables);
  }

  /** What is filled in. */
  public List<String> variables() {
    return variables;
  }

  /** As it is written in a template. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
