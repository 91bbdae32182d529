package frillbook.cutting;

/**
 * A lane beside the discs and the strip it gives in either straight grain; 0 for none.
 *
 * @param acrossPiece cut length, discs in lines across the cloth
 * @param alongPiece cut length, discs in lines along the cloth
 */
public record LaneRow(Lane lane, double acrossPiece, double alongPiece) {}
