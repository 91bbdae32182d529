package frillbook.time;

import frillbook.naming.Coded;

/** What is done, in working order. */
public enum TaskName implements Coded {
  CUT_STRIPS,
  CUT_DISCS,
  JOIN_STRIPS,
  FINISH_EDGE,
  GATHER,
  MARK_RINGS,
  SEW_ROWS,
  MAKE_BACK,
  CLOSE_EDGE,
  FILL_CLOSE,
  FINISH_OFF
}
