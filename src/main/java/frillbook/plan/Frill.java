package frillbook.plan;

import frillbook.rows.Rings;
import frillbook.strip.StripLength;

/** The line the frill is sewn along and the strip that is gathered to it. */
record Frill(Rings rings, StripLength strip) {
  static Frill of(SizedBrief sized) {
    Rings rings = Rings.of(sized.brief(), sized.rows());
    return new Frill(rings, StripLength.of(sized.brief(), rings.stitchedLength()));
  }
}
