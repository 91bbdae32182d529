package frillbook.straight;

/**
 * What a lane beside the discs gives; all 0 where strips of its grain are not cut.
 *
 * @param wholeTakes what the last whole line takes of a lane that begins beside it
 * @param lastTakes the same of the last line
 * @param room length that the discs leave of it
 * @param after what lies between its strip and the far end of the lane
 * @param piece cut length of its strip; 0 for none
 */
public record LaneStrip(
    double wholeTakes, double lastTakes, double room, double after, double piece) {
  static final LaneStrip NONE = new LaneStrip(0, 0, 0, 0, 0);
}
