package frillbook.layout;

import frillbook.cutting.BesideDisc;
import frillbook.cutting.BiasPlan;
import frillbook.cutting.CornerStrips;
import frillbook.discs.DiscSizes;
import java.util.ArrayList;
import java.util.List;

/**
 * Where bias strips and discs lie: strips side by side from the near corner to the far one, a disc
 * in either corner or none with pieces of strip beside it, other discs in bands across the end of
 * the cloth.
 *
 * @param perBand discs side by side in a band
 * @param slanting whether the ends of the strips lie along the longer side of the cloth
 */
record BiasPlaces(
    BiasPlan plan, int perBand, double clothWidth, double stripWidth, boolean slanting) {
  private static final double ROOT2 = Math.sqrt(2);

  List<PlacedStrip> strips(List<CornerStrips> corners, List<BesideDisc> beside) {
    List<PlacedStrip> strips = new ArrayList<>();
    for (int i = 0; i < plan.full(); i++) {
      double depth = plan.near() / ROOT2 + (plan.nearShort() + i) * stripWidth;
      add(strips, near(), depth, plan.stripLength(), true);
    }
    for (CornerStrips row : corners) {
      double further = (row.cornerNo() - 1) * stripWidth;
      add(strips, near(), plan.near() / ROOT2 + further, row.nearLane(), false);
      add(strips, far(), plan.far() / ROOT2 + further, row.farLane(), false);
    }
    for (BesideDisc row : beside) {
      CornerStrips pieces = corners.get(row.besideNo() - 1);
      addBeside(
          strips, near(), depth(row, plan.nearSlack()), pieces.nearRight(), pieces.nearLeft());
      addBeside(strips, far(), depth(row, plan.farSlack()), pieces.farRight(), pieces.farLeft());
    }
    return strips;
  }

  private static void add(
      List<PlacedStrip> strips, BiasCorner corner, double depth, double length, boolean full) {
    if (length > 0) {
      strips.add(corner.strip(depth, corner.firstStart(depth), length, full));
    }
  }

  /** How deep the side nearer to the corner lies. */
  private double depth(BesideDisc row, double slack) {
    return (row.besideLine() + slack) / ROOT2 - stripWidth;
  }

  private static void addBeside(
      List<PlacedStrip> strips, BiasCorner corner, double depth, double right, double left) {
    if (right > 0) {
      strips.add(corner.strip(depth, depth - right, right, false));
    }
    if (left > 0) {
      strips.add(corner.strip(depth, -depth, left, false));
    }
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
    for (int i = 0; i < sizes.overlayCount() - plan.cornerDiscs(); i++) {
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
    return new BiasCorner(plan, false, clothWidth, stripWidth, slanting);
  }

  private BiasCorner far() {
    return new BiasCorner(plan, true, clothWidth, stripWidth, slanting);
  }
}
