package frillbook.brief;

import frillbook.naming.Prefixed;

/**
 * The maker's own times, in working order.
 *
 * @param cutStrips for a strip
 * @param cutDiscs for a disc or back piece
 * @param joinStrips for a join
 * @param finishEdge for a metre of flat strip
 * @param gather for a metre of gathering row sewn by machine; 0.4 to 0.7 (common practice, no
 *     source)
 * @param markRings for a ring
 * @param sewRows for a metre of sewn line
 * @param makeBack for a back piece
 * @param closeEdge for a metre of edge seam
 * @param fillClose for a cushion
 * @param finishOff for a cushion
 * @param rates for the tasks that nothing is set up for, and for another way of gathering
 */
public record TimeSpec(
    @Prefixed("cut_strips") TaskSpec cutStrips,
    @Prefixed("cut_discs") TaskSpec cutDiscs,
    @Prefixed("join_strips") TaskSpec joinStrips,
    @Prefixed("finish_edge") TaskSpec finishEdge,
    @Prefixed("gather") TaskSpec gather,
    @Prefixed("mark_rings") TaskSpec markRings,
    @Prefixed("sew_rows") TaskSpec sewRows,
    @Prefixed("make_back") TaskSpec makeBack,
    @Prefixed("close_edge") TaskSpec closeEdge,
    @Prefixed("fill_close") TaskSpec fillClose,
    @Prefixed("finish_off") TaskSpec finishOff,
    Rates rates) {

  /**
   * Minutes for one, all of them rules of thumb.
   *
   * @param talkRate with the client, for the order
   * @param sampleRate of fullness and tension, for the order
   * @param fuseRate for a piece of interfacing
   * @param pressStripRate for a metre of joined strip
   * @param gatherHandRate for a metre of gathering row sewn by hand, pulled up as it goes; two rows
   *     make 3 1/2 for a metre of strip (common practice, no source)
   * @param pullUpRate for a metre of strip that was gathered by machine
   * @param tackRate for a metre of line the frill is sewn along
   * @param tuckEndsRate for an end of the frill
   * @param fitZipRate for a zip
   * @param packRate for a cushion
   */
  public record Rates(
      double talkRate,
      double sampleRate,
      double fuseRate,
      double pressStripRate,
      double gatherHandRate,
      double pullUpRate,
      double tackRate,
      double tuckEndsRate,
      double fitZipRate,
      double packRate) {}

  /** Gathering in the way the maker does it. */
  public TaskSpec gatherBy(ThreadSpec.GatherBy way) {
    double rate = way == ThreadSpec.GatherBy.HAND ? rates.gatherHandRate() : gather.rate();
    return new TaskSpec(rate, gather.setup());
  }
}
