package frillbook.time;

/**
 * What drives every task, for the whole order, in working order; 0 for a task there is none of.
 *
 * @param strips cut
 * @param discs cut, back pieces and interfacing included
 * @param joins sewn
 * @param edgeMetres of free edge finished
 * @param gatherMetres of flat strip gathered
 * @param rings marked
 * @param rowMetres of line the frill is sewn along
 * @param backPieces made up
 * @param seamMetres of edge seam
 * @param cushions filled and finished
 */
public record Amounts(
    int strips,
    int discs,
    int joins,
    double edgeMetres,
    double gatherMetres,
    int rings,
    double rowMetres,
    int backPieces,
    double seamMetres,
    int cushions) {}
