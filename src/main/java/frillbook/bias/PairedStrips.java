package frillbook.bias;

/**
 * Which of the strips in the corners are joined in pairs, one of each corner.
 *
 * <p>A strip of the near corner ends on one short and one long edge, and so does one of the far
 * corner, the other way round: joined where they met the short edges, they make a strip whose ends
 * both lie along the long edges, as those of full strips do. It is as long as the sum of their
 * means. Pairs are chosen so that near and far strips alternate by length.
 *
 * @param count pairs
 * @param nearBefore strips between the near corner and the first that is paired
 * @param farBefore the same in the far corner
 * @param longer by how much the mean of a strip's sides exceeds the shorter side
 */
record PairedStrips(int count, int nearBefore, int farBefore, double longer) {

  /**
   * Beginning at the corners, where the first lines lie alike; where one corner alone has a disc,
   * ending at the middle.
   */
  static PairedStrips of(BiasTrial trial, BiasSetting setting, double step) {
    BiasComb comb = trial.better();
    int near = BiasComb.cornered(comb.nearShort(), comb.waist() - comb.near(), step);
    int far = BiasComb.cornered(comb.farShort(), comb.waist() - comb.far(), step);
    boolean inward = trial.cornerDiscs(setting) == 1 && comb.pairs() > 0;
    return new PairedStrips(
        comb.pairs(),
        inward ? near - comb.pairs() : 0,
        inward ? far - comb.pairs() : 0,
        step / Math.sqrt(2));
  }

  boolean hasNear(int number) {
    return number > nearBefore && number <= nearBefore + count;
  }

  boolean hasFar(int number) {
    return number > farBefore && number <= farBefore + count;
  }
}
