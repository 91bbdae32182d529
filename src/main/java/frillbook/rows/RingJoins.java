package frillbook.rows;

import frillbook.naming.Indexed;
import frillbook.naming.Prefixed;
import frillbook.rows.RingsOnPaper.RingOnPaper;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The joins of the first cushion in the rings they lie in, beside {@link RingsOnPaper}.
 *
 * @param joinsKnownTo the first ring of which not all joins are listed; one more than there are
 *     rings where all are
 * @param joinsUnshown joins for which a line has no room
 * @param ringJoins line by line
 */
public record RingJoins(int joinsKnownTo, int joinsUnshown, List<JoinsInLine> ringJoins) {
  /** Joins that a line has room for. */
  private static final int MOST = 3;

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static final JoinsInLine BLANK = line(List.of(), NONE);

  /** The ring a join lies in and its mark on the strip. */
  public record Place(int ring, double mark) {}

  /**
   * The joins since the line above: the first of more than it has room for, in its last columns.
   *
   * @param paperJoins joins up to the end of the ring; none where not all are listed
   */
  public record JoinsInLine(
      OptionalDouble paperJoins, @Prefixed("paper_join") @Indexed(MOST) List<JoinMark> marks) {}

  /**
   * @param mark strip mark; none where the line has fewer joins
   */
  public record JoinMark(OptionalDouble mark) {}

  /**
   * @param joins those of the first cushion, in order
   * @param all whether it has no others
   */
  public static RingJoins of(RingsOnPaper paper, List<Place> joins, boolean all) {
    int knownTo = all ? paper.lastRing() + 1 : joins.get(joins.size() - 1).ring();
    List<JoinsInLine> lines = new ArrayList<>();
    int before = 0;
    for (RingOnPaper ring : paper.ringsOnPaper()) {
      int to = (int) joins.stream().filter(join -> join.ring() <= ring.paperRing()).count();
      boolean known = ring.paperRing() < knownTo;
      lines.add(known ? line(joins.subList(before, to), OptionalDouble.of(to)) : BLANK);
      before = to;
    }
    long shown = lines.stream().flatMap(l -> l.marks().stream()).filter(RingJoins::isShown).count();
    return new RingJoins(knownTo, joins.size() - (int) shown, lines);
  }

  private static JoinsInLine line(List<Place> joins, OptionalDouble to) {
    int first = MOST - Math.min(MOST, joins.size());
    List<JoinMark> marks =
        IntStream.range(0, MOST)
            .mapToObj(i -> i < first ? NONE : OptionalDouble.of(joins.get(i - first).mark()))
            .map(JoinMark::new)
            .toList();
    return new JoinsInLine(to, marks);
  }

  private static boolean isShown(JoinMark join) {
    return join.mark().isPresent();
  }
}
