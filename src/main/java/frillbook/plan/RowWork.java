package frillbook.plan;

import frillbook.brief.Brief;
import frillbook.picture.FlowerShape;
import frillbook.picture.Guide;
import frillbook.picture.Guide.GuideJoin;
import frillbook.picture.Ripple;
import frillbook.rows.MarkedLine;
import frillbook.rows.Rings;
import frillbook.rows.RingsOnPaper;
import frillbook.strip.SewingMarks;
import frillbook.strip.StripLength;
import java.util.List;

/** The rows of a brief that has sized for them, the strip they take, and how both look. */
public record RowWork(
    Rings rings,
    StripLength strip,
    MarkedLine line,
    SewingMarks marks,
    RingsOnPaper paper,
    Ripple ripple,
    FlowerShape flower,
    Guide guide) {

  /** {@code joins} are those in the first cushion; none where no fabric is found for its strips. */
  static RowWork of(SizedBrief sized, Frill frill, List<GuideJoin> joins) {
    Brief brief = sized.brief();
    Rings rings = frill.rings();
    StripLength strip = frill.strip();
    Ripple ripple = Ripple.of(brief.frill().fullness());
    return new RowWork(
        rings,
        strip,
        MarkedLine.of(brief, sized.rows(), rings.turnCount()),
        SewingMarks.of(brief, rings),
        RingsOnPaper.of(brief, rings),
        ripple,
        FlowerShape.of(rings.ringCount(), ripple.rippleDepth()),
        Guide.of(brief, rings, strip.flatLength(), joins));
  }
}
