package frillbook.offcut;

/**
 * A lane beside matching discs on straight grain.
 *
 * @param laneFree lanes side by side that no strip is cut from, up to this one; full strips that
 *     are not cut just before the matching discs count too, 0 where a strip is cut from it
 */
public record FreeLane(int laneFree) {}
