package frillbook.cutting;

import frillbook.naming.Prefixed;
import frillbook.strip.Join;
import java.util.List;

/**
 * How many of the strips a layout offers are cut, and how many of those are joined.
 *
 * @param all strips for the run and the spares
 * @param run strips for the run alone, the longest of them
 * @param joinCount joins in the run
 */
public record StripsCut(@Prefixed("cut") Tally all, @Prefixed("run") Tally run, int joinCount) {

  /** For every cushion its own; {@code served} shorter strips are the last of one. */
  public static StripsCut own(Pieces pieces, CushionStrips strips, int served) {
    int joined = pieces.cushions() * strips.each();
    Tally all =
        new Tally(
            0,
            strips.fullWanted(pieces, served) + pieces.spareStrips(),
            0,
            served,
            joined + pieces.spareStrips());
    Tally run = new Tally(0, joined - served, 0, served, joined);
    return new StripsCut(all, run, joined - pieces.cushions());
  }

  public static StripsCut of(
      Pieces pieces,
      Join join,
      int full,
      double fullStrip,
      double spareStrip,
      List<OddPiece> odds) {
    double each = join.net(fullStrip);
    Tally all = Tally.of(pieces.netNeeded(join, spareStrip), full, each, odds);
    Tally run = Tally.of(pieces.netOfRun(join), full, each, odds);
    return new StripsCut(all, run, run.count() - 1);
  }
}
