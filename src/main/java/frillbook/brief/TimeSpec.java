package frillbook.brief;

import frillbook.naming.Prefixed;

/**
 * The maker's own times, in working order.
 *
 * @param cutStrips for a strip
 * @param cutDiscs for a disc or back piece
 * @param joinStrips for a join
 * @param finishEdge for a metre of flat strip
 * @param gather for a metre of flat strip; by hand about 3 1/2 minutes (common practice, no source)
 * @param markRings for a ring
 * @param sewRows for a metre of sewn line
 * @param makeBack for a back piece
 * @param closeEdge for a metre of edge seam
 * @param fillClose for a cushion
 * @param finishOff for a cushion
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
    @Prefixed("finish_off") TaskSpec finishOff) {}
