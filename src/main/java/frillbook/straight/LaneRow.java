package frillbook.straight;

import frillbook.naming.Prefixed;

/**
 * A lane beside the discs and the strip it gives in either straight grain.
 *
 * @param crosswise discs in lines across the fabric
 * @param lengthwise discs in lines along the fabric
 */
public record LaneRow(
    Lane lane,
    @Prefixed("crosswise") LaneStrip crosswise,
    @Prefixed("lengthwise") LaneStrip lengthwise) {}
