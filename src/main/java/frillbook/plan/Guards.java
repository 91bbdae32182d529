package frillbook.plan;

import frillbook.brief.ChoiceSpec;

/**
 * How far a plan goes: what can be worked out, part by part. A sound brief's cells are all usable,
 * so that only checks keep a part back.
 *
 * @param shapeInputsOk the cells of the flower are usable
 * @param fabricInputsOk and those of the fabric
 * @param makingInputsOk and those of filling, thread, interfacing and times
 * @param moneyInputsOk and those of the money
 * @param choicesInputsOk the cells of choices two and three, the flower and the fabric are
 * @param twoOffered whether there is a second choice
 * @param threeOffered whether there is a third
 * @param shapeOk there are rows
 * @param stripOk the strip has a length and a width
 * @param fabricOk lengths of frill fabric can be tried
 * @param makingOk thread, times, weight and everything to buy can be worked out
 * @param costOk what it costs can be
 * @param priceOk what to ask can be
 * @param looksOk fabric can be sought for the other choices
 * @param clientOk there is a page for the client
 */
public record Guards(
    boolean shapeInputsOk,
    boolean fabricInputsOk,
    boolean makingInputsOk,
    boolean moneyInputsOk,
    boolean choicesInputsOk,
    boolean twoOffered,
    boolean threeOffered,
    boolean shapeOk,
    boolean stripOk,
    boolean fabricOk,
    boolean makingOk,
    boolean costOk,
    boolean priceOk,
    boolean looksOk,
    boolean clientOk) {

  /**
   * @param cut whether a length of frill fabric was found
   */
  static Guards of(ChoiceSpec choices, Checks checks, boolean cut) {
    boolean price = cut && checks.marginIsPossible();
    return new Guards(
        true,
        true,
        true,
        true,
        true,
        choices.two().isPresent(),
        choices.three().isPresent(),
        checks.rowsFit(),
        checks.rowsFit(),
        checks.rowsFit() && checks.fabricFits(),
        cut,
        cut,
        price,
        cut,
        price);
  }
}
