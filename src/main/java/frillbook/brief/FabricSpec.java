package frillbook.brief;

/**
 * The frill fabric and how it is cut and bought.
 *
 * @param fabricWidth selvage to selvage
 * @param fabricThickness of one layer, in millimetres
 * @param oneWayFabric whether nap or print runs one way, so that no piece may be turned
 * @param selvage lost at each edge
 * @param squaringAllowance lost once of every bought length, in straightening both its cut ends
 * @param washShrinkLength share of the length lost if washed first, 0 to below 1
 * @param washShrinkWidth share of the width lost if washed first
 * @param biasStretch share by which bias strips lengthen in handling
 * @param shortestPiece the shortest strip worth joining
 * @param longestStrip the longest strip that is cut lengthwise; longer ones are hard to handle
 * @param spareStrips full strips cut beyond the need
 * @param buyStep the smallest length a shop cuts
 */
public record FabricSpec(
    double fabricWidth,
    double fabricThickness,
    Grain grain,
    YesNo oneWayFabric,
    double selvage,
    double squaringAllowance,
    double washShrinkLength,
    double washShrinkWidth,
    double biasStretch,
    double shortestPiece,
    double longestStrip,
    int spareStrips,
    double buyStep) {}
