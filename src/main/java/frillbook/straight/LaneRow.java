package frillbook.straight;

import frillbook.naming.Prefixed;

/**
 * A lane beside the discs and the strip it gives in either straight grain.
 *
 * @param across discs in lines across the cloth
 * @param along discs in lines along the cloth
 */
public record LaneRow(
    Lane lane, @Prefixed("across") LaneStrip across, @Prefixed("along") LaneStrip along) {}
