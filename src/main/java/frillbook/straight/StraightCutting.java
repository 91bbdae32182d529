package frillbook.straight;

import frillbook.brief.Grain;
import frillbook.cutting.Fabric;
import frillbook.cutting.Halving;
import frillbook.cutting.Pieces;
import frillbook.measure.Rounding;
import frillbook.strip.Join;
import java.util.List;

/** Straight strips and discs on one fabric, across it or along it. */
public record StraightCutting(
    Grain grain, Fabric fabric, Pieces pieces, Join join, List<Lane> beside) {

  /** Every length tried, in order. */
  public List<StraightTrial> trials(int searchRows) {
    return Halving.search(searchRows, this::attempt);
  }

  /** Whether {@code steps} buy steps are enough, where {@code tooSmall} are known not to be. */
  public StraightTrial attempt(int steps, int tooSmall) {
    double usable = fabric.usable(steps * fabric.buyStep());
    Sheet sheet = sheet(usable);
    Comb abreast = Comb.of(sheet, pieces, join, beside, mostInALine(sheet));
    Comb stacked = Comb.of(sheet, pieces, join, beside, fewestInALine(sheet));
    boolean enough = Rounding.settle(Math.max(abreast.over(), stacked.over())) >= 0;
    return new StraightTrial(
        steps,
        usable,
        sheet.run(),
        sheet.stack(),
        abreast,
        stacked,
        enough,
        enough ? tooSmall : steps);
  }

  /** The fabric as the strips see it when {@code usable} of its length is left. */
  public Sheet sheet(double usable) {
    return grain == Grain.LENGTHWISE
        ? new Sheet(usable, fabric.usableWidth())
        : new Sheet(fabric.usableWidth(), usable);
  }

  private int mostInALine(Sheet sheet) {
    int fit = Rounding.down(sheet.run() / pieces.discDiameter());
    return Math.max(1, Math.min(pieces.discCount(), fit));
  }

  private int fewestInALine(Sheet sheet) {
    int lines = Math.max(1, Rounding.down(sheet.stack() / pieces.discDiameter()));
    return Math.max(1, Rounding.up((double) pieces.discCount() / lines));
  }

  Lanes lanes(StraightTrial trial) {
    Comb comb = trial.better();
    return new Lanes(
        sheet(trial.usable()), pieces, join, comb.perLine(), comb.lines(), comb.full());
  }

  /** The strip of every lane. */
  List<LaneStrip> strips(StraightTrial trial) {
    Lanes lanes = lanes(trial);
    return beside.stream().map(lanes::strip).toList();
  }
}
