package frillbook.time;

import frillbook.naming.Coded;

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
  PACK
}
