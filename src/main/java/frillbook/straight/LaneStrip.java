package frillbook.straight;

/**
 * What a lane beside the discs gives; all 0 where strips of its grain are not cut.
 *
 * @param room length that the discs leave of it
 * @param piece cut length of its strip; 0 for none
 */
public record LaneStrip(double room, double piece) {
  static final LaneStrip NONE = new LaneStrip(0, 0);
}
