package frillbook.offcut;

import frillbook.straight.LaneRow;
import frillbook.straight.StraightPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What straight strips and matching discs leave of their fabric; all 0 on the bias.
 *
 * @param fabricStack extent of the fabric across the strips
 * @param laneStrips full strips end to end in a lane
 * @param lanesBefore lanes of full strips that the layout offers before the discs
 * @param lanesBeside lanes beside the discs
 * @param discsReach what discs take of the fabric along the strips, from both ends together
 * @param discsEnd where they end across the strips
 * @param freeLanes the lanes beside the discs that are looked at
 */
public record StraightRoom(
    double fabricStack,
    int laneStrips,
    int lanesBefore,
    int lanesBeside,
    double discsReach,
    double discsEnd,
    List<FreeLane> freeLanes) {

  static StraightRoom of(OnTable table) {
    if (table.isBias()) {
      List<FreeLane> none = Collections.nCopies(table.layouts().lanes().size(), new FreeLane(0));
      return new StraightRoom(0, 1, 0, 0, 0, 0, none);
    }
    StraightPlan plan = table.straight();
    double stack = table.isLengthwise() ? table.usableWidth() : plan.usableLength();
    double diameter = table.discs() > 0 ? table.diameter() : 0;
    double depth = plan.full() * table.stripWidth() + plan.lines() * diameter;
    return new StraightRoom(
        stack,
        plan.perLane(),
        plan.full(),
        plan.laneCount(),
        Math.max(plan.perLine(), plan.isZigzag() ? 2 : 0) * diameter,
        plan.isZigzag() ? stack : depth,
        lanes(table, plan));
  }

  private static List<FreeLane> lanes(OnTable table, StraightPlan plan) {
    List<FreeLane> lanes = new ArrayList<>();
    int free = plan.full() - table.fullLanes();
    for (LaneRow row : table.layouts().lanes()) {
      boolean isLengthwise = table.isLengthwise();
      double piece = isLengthwise ? row.lengthwise().piece() : row.crosswise().piece();
      boolean isFree = row.lane().laneNo() <= plan.laneCount() && !table.mayBeCut(piece);
      free = isFree ? free + 1 : 0;
      lanes.add(new FreeLane(free));
    }
    return List.copyOf(lanes);
  }

  /** Rectangles that may be left, in the order of {@link Place}. */
  List<Leftover> leftovers(OnTable table) {
    StraightPlan plan = table.straight();
    double run = table.isLengthwise() ? plan.usableLength() : table.usableWidth();
    double before = lanesBefore * table.stripWidth();
    double used = table.fullLanes() * table.stripWidth();
    boolean discs = table.discs() > 0;
    double lanesEnd = cutsBeside(table) ? before + lanesBeside * table.stripWidth() : 0;
    return List.of(
        Leftover.of(Place.BEHIND, run, (discs ? before : fabricStack) - used),
        Leftover.of(Place.BEYOND, run, discs ? fabricStack - Math.max(discsEnd, lanesEnd) : 0),
        Leftover.of(Place.END, run - laneStrips * plan.stripLength(), discs ? before : fabricStack),
        Leftover.of(Place.BESIDE, run - discsReach, discs ? freeBeside(table, used) : 0));
  }

  private static boolean cutsBeside(OnTable table) {
    return table.shorter() > 0 || table.cutsFullBeside();
  }

  /** Extent across the strips of what is left beside the discs. */
  private double freeBeside(OnTable table, double used) {
    if (!cutsBeside(table)) {
      return fabricStack - used;
    }
    int most = freeLanes.stream().mapToInt(FreeLane::laneFree).max().orElse(0);
    return table.cutsFullBeside() ? 0 : most * table.stripWidth();
  }
}
