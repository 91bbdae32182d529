package frillbook.layout;

import frillbook.bias.BesideDisc;
import frillbook.bias.BiasPlan;
import frillbook.bias.CornerStrips;
import frillbook.bias.PastDisc;
import frillbook.discs.DiscSizes;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Where bias strips and discs lie: strips side by side from the near corner to the far one, a disc
 * in either corner or none with pieces of strip beside it, or discs in a line along the long edge
 * that full strips come to first, and other discs in bands across the end of the fabric.
 *
 * @param perBand discs side by side in a band
 * @param slanting whether the ends of the strips lie along the longer side of the fabric
 */
record BiasPlaces(
    BiasPlan plan, int perBand, double fabricWidth, double stripWidth, boolean slanting) {
  private static final double ROOT2 = Math.sqrt(2);

  /**
   * Full strips, then side by side of the layout: near, far, right and left of either disc, past
   * the line of discs, and last those in pairs.
   */
  List<PlacedStrip> strips(
      List<CornerStrips> corners, List<BesideDisc> beside, List<PastDisc> past) {
    List<PlacedStrip> strips = new ArrayList<>();
    for (int i = 0; i < plan.full(); i++) {
      double depth = plan.near() / ROOT2 + (plan.nearShort() + plan.lineStrips() + i) * stripWidth;
      add(strips, near(), depth, near().firstStart(depth), plan.stripLength(), true);
    }
    addLanes(strips, near(), plan.near(), corners, CornerStrips::nearLane);
    addLanes(strips, far(), plan.far(), corners, CornerStrips::farLane);
    for (BesideDisc row : beside) {
      addRight(strips, near(), depth(row, plan.nearSlack()), piece(corners, row).nearRight());
    }
    for (BesideDisc row : beside) {
      addLeft(strips, near(), depth(row, plan.nearSlack()), piece(corners, row).nearLeft());
    }
    for (BesideDisc row : beside) {
      addRight(strips, far(), depth(row, plan.farSlack()), piece(corners, row).farRight());
    }
    for (BesideDisc row : beside) {
      addLeft(strips, far(), depth(row, plan.farSlack()), piece(corners, row).farLeft());
    }
    for (PastDisc row : past) {
      addPast(strips, row, corners.get(row.pastNo() - 1).pastPiece());
    }
    addPairs(strips, near(), plan.near(), corners, CornerStrips::nearPair);
    addPairs(strips, far(), plan.far(), corners, CornerStrips::farPair);
    return strips;
  }

  /** From the long edge, or from the far short edge, up to the discs. */
  private void addPast(List<PlacedStrip> strips, PastDisc row, double length) {
    double first = plan.near() + plan.nearShort() * stripWidth * ROOT2;
    double depth = first / ROOT2 + (row.pastNo() - 1) * stripWidth;
    double end = depth - ROOT2 * Math.max(0, row.pastReach() - plan.pastRoom());
    add(strips, near(), depth, end - length, length, false);
  }

  private void addPairs(
      List<PlacedStrip> strips,
      BiasCorner corner,
      double first,
      List<CornerStrips> rows,
      ToDoubleFunction<CornerStrips> lane) {
    for (CornerStrips row : rows) {
      double length = lane.applyAsDouble(row);
      if (length > 0) {
        strips.add(corner.whole(first / ROOT2 + (row.cornerNo() - 1) * stripWidth, length));
      }
    }
  }

  private void addLanes(
      List<PlacedStrip> strips,
      BiasCorner corner,
      double first,
      List<CornerStrips> rows,
      ToDoubleFunction<CornerStrips> lane) {
    for (CornerStrips row : rows) {
      double depth = first / ROOT2 + (row.cornerNo() - 1) * stripWidth;
      add(strips, corner, depth, corner.firstStart(depth), lane.applyAsDouble(row), false);
    }
  }

  private static void addRight(
      List<PlacedStrip> strips, BiasCorner corner, double depth, double length) {
    add(strips, corner, depth, depth - length, length, false);
  }

  private static void addLeft(
      List<PlacedStrip> strips, BiasCorner corner, double depth, double length) {
    add(strips, corner, depth, -depth, length, false);
  }

  private static void add(
      List<PlacedStrip> strips,
      BiasCorner corner,
      double depth,
      double start,
      double length,
      boolean full) {
    if (length > 0) {
      strips.add(corner.strip(depth, start, length, full));
    }
  }

  private static CornerStrips piece(List<CornerStrips> corners, BesideDisc row) {
    return corners.get(row.besideNo() - 1);
  }

  /** How deep the side nearer to the corner lies. */
  private double depth(BesideDisc row, double slack) {
    return (row.besideLine() + slack) / ROOT2 - stripWidth;
  }

  List<PlacedDisc> discs(DiscSizes sizes) {
    double diameter = sizes.baseCutDiameter();
    List<PlacedDisc> discs = new ArrayList<>();
    if (plan.cornerDiscs() >= 1) {
      discs.add(inCorner(near(), diameter, plan.nearSlack()));
    }
    if (plan.cornerDiscs() >= 2) {
      discs.add(inCorner(far(), diameter, plan.farSlack()));
    }
    for (int i = 0; i < plan.lineDiscs(); i++) {
      double along = (i + 0.5) * diameter;
      discs.add(new PlacedDisc(near().at(along, plan.shorter() - diameter / 2), diameter));
    }
    int placed = discs.size();
    for (int i = 0; i < sizes.matchingDiscCount() - placed; i++) {
      discs.add(new PlacedDisc(inBand(i / perBand, i % perBand, diameter), diameter));
    }
    return discs;
  }

  private static PlacedDisc inCorner(BiasCorner corner, double diameter, double slack) {
    double fromEdges = diameter / 2 + slack / 2;
    return new PlacedDisc(corner.at(fromEdges, fromEdges), diameter);
  }

  private Point inBand(int band, int inBand, double diameter) {
    double bandsStart = plan.usableLength() - plan.bandLength();
    return new Point(bandsStart + (band + 0.5) * diameter, (inBand + 0.5) * diameter);
  }

  private BiasCorner near() {
    return new BiasCorner(plan, false, fabricWidth, stripWidth, slanting);
  }

  private BiasCorner far() {
    return new BiasCorner(plan, true, fabricWidth, stripWidth, slanting);
  }
}
