package frillbook.press;

/**
 * A place in the XML of a part that differs from plan to plan.
 *
 * @param kind what stands there
 * @param open where it begins: in a calculated cell behind the attributes, before the formula
 * @param close where it ends: in a calculated cell behind the formula
 * @param which of the cells or inputs it is, from 0; 0 for paper and colours
 */
public record Slot(Kind kind, int open, int close, int which) {

  /** What stands in a slot. */
  public enum Kind {
    /** The kind and the value of a calculated cell, around its formula. */
    CELL,
    /** The value of an input that is a number, to the end of its cell; replaced. */
    NUMBER,
    /** The cell of an input that is words, which says where they are kept; replaced if empty. */
    WORDS_CELL,
    /** The words themselves, among those that the cells of all sheets share; replaced. */
    WORDS,
    /** The number of the paper. */
    PAPER,
    /** The colour of the fabric. */
    FILL,
    /** The darker shade of it, of lines. */
    EDGE
  }
}
