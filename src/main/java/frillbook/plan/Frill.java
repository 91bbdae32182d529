package frillbook.plan;

import frillbook.rows.Rings;
import frillbook.strip.StripLength;

/** The line the frill is sewn along and the strip that is gathered to it. */
record Frill(Rings rings, StripLength strip) {
  static Frill of(Workroom room) {
    Rings rings = Rings.of(room.brief(), room.rows());
    return new Frill(rings, StripLength.of(room.brief(), rings.stitchedLength()));
  }
}
