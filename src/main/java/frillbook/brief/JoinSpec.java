package frillbook.brief;

/**
 * The seams that make one length out of many strips.
 *
 * @param joinAllowance each edge; for a French join its first seam
 * @param joinSecondAllowance each edge of a French join's second seam; unused otherwise
 * @param joinedMargin share by which a strip for the whole order is joined longer than needed
 */
public record JoinSpec(
    JoinFinish joinFinish,
    double joinAllowance,
    double joinSecondAllowance,
    JoinLine joinLine,
    JoinedBy joinedBy,
    double joinedMargin) {}
