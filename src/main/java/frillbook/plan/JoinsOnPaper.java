package frillbook.plan;

import frillbook.naming.Prefixed;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A row of the printed table of joins, which has two joins side by side.
 *
 * @param left a join of the first half of the table
 * @param right the join as far down in its second half; none where there are fewer joins
 */
public record JoinsOnPaper(@Prefixed("left") Shown left, @Prefixed("right") Optional<Shown> right) {
  /** Rows of the printed table. */
  static final int ROWS = JoinPlace.MOST / 2;

  /** A join as it is printed; the figures are those of {@link JoinPlace}. */
  public record Shown(int join, int cushion, double mark, int ring, double angle) {
    static Shown of(JoinPlace place) {
      return new Shown(
          place.joinNo(),
          place.joinCushion(),
          place.joinMark(),
          place.joinRing(),
          place.joinAngle());
    }
  }

  static List<JoinsOnPaper> all(List<JoinPlace> joins) {
    return IntStream.range(0, Math.min(ROWS, joins.size()))
        .mapToObj(
            row ->
                new JoinsOnPaper(
                    Shown.of(joins.get(row)),
                    row + ROWS < joins.size()
                        ? Optional.of(Shown.of(joins.get(row + ROWS)))
                        : Optional.empty()))
        .toList();
  }
}
