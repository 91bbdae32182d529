package frillbook.time;

/**
 * What drives every task, for the whole order, in working order; 0 for a task there is none of.
 *
 * @param strips cut
 * @param widthMetres of seam between widths of base fabric, sewn before discs are cut
 * @param discs cut, back pieces and interfacing included
 * @param fused pieces of interfacing
 * @param joins sewn
 * @param edgeMetres of free edge finished
 * @param flatMetres of joined strip pressed
 * @param gatherMetres of gathering rows, each as long as the flat strip
 * @param pullUpMetres of flat strip pulled up after it was gathered
 * @param rings marked
 * @param rowMetres of line the frill is tacked and sewn along
 * @param ends of the frill tucked in
 * @param zips fitted
 * @param backPieces made up
 * @param seamMetres of edge seam
 * @param cushions filled, finished and packed
 */
public record Amounts(
    int strips,
    double widthMetres,
    int discs,
    int fused,
    int joins,
    double edgeMetres,
    double flatMetres,
    double gatherMetres,
    double pullUpMetres,
    int rings,
    double rowMetres,
    int ends,
    int zips,
    int backPieces,
    double seamMetres,
    int cushions) {}
