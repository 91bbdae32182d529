package frillbook.grains;

import frillbook.bias.BiasOdd;
import frillbook.cutting.OddPiece;
import frillbook.naming.Prefixed;

/**
 * The strips shorter than full, longest first, in each grain and in the chosen one.
 *
 * @param oddNo from 1
 * @param oddPiece cut length in the chosen grain; 0 where there are no more
 * @param oddJoined what it and the longer ones add to the run, in the chosen grain
 */
public record OddRow(
    int oddNo,
    @Prefixed("crosswise") OddPiece crosswise,
    @Prefixed("lengthwise") OddPiece lengthwise,
    @Prefixed("bias") BiasOdd bias,
    double oddPiece,
    double oddJoined) {}
