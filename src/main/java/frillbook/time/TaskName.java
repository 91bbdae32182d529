package frillbook.time;

import frillbook.naming.Coded;
import java.util.EnumSet;
import java.util.Set;

/** What is done, in working order. */
public enum TaskName implements Coded {
  TALK,
  SAMPLE,
  CUT_STRIPS,
  JOIN_WIDTHS,
  CUT_DISCS,
  FUSE,
  JOIN_STRIPS,
  FINISH_EDGE,
  PRESS_STRIP,
  GATHER,
  PULL_UP,
  MARK_RINGS,
  TACK,
  SEW_ROWS,
  TUCK_ENDS,
  FIT_ZIP,
  MAKE_BACK,
  CLOSE_EDGE,
  FILL_CLOSE,
  FINISH_OFF,
  PACK;

  private static final Set<TaskName> BY_LENGTH =
      EnumSet.of(
          JOIN_WIDTHS, FINISH_EDGE, PRESS_STRIP, GATHER, PULL_UP, TACK, SEW_ROWS, CLOSE_EDGE);

  /** Whether it takes so long for a metre. */
  boolean isByLength() {
    return BY_LENGTH.contains(this);
  }
}
