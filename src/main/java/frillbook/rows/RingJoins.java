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
 * @param joinsUnshown joins for which a line has no room
 * @param ringJoins line by line
 */
public record RingJoins(int joinsUnshown, List<JoinsInLine> ringJoins) {
  /** Joins that a line has room for. */
  private static final int MOST = 3;

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** The ring a join lies in and its mark on the strip. */
  public record Place(int ring, double mark) {}

  /**
   * The joins since the line above: the last of more than it has room for, in its last columns.
   *
   * @param paperJoins joins up to the end of the ring
   */
  public record JoinsInLine(
      int paperJoins, @Prefixed("paper_join") @Indexed(MOST) List<JoinMark> marks) {}

  /**
   * @param mark strip mark; none where the line has fewer joins
   */
  public record JoinMark(OptionalDouble mark) {}

  /** {@code joins} are those of the first cushion, in order. */
  public static RingJoins of(RingsOnPaper paper, List<Place> joins) {
    List<JoinsInLine> lines = new ArrayList<>();
    int before = 0;
    for (RingOnPaper ring : paper.ringsOnPaper()) {
      int to = (int) joins.stream().filter(join -> join.ring() <= ring.paperRing()).count();
      lines.add(line(joins.subList(before, to), to));
      before = to;
    }
    long shown = lines.stream().flatMap(l -> l.marks().stream()).filter(RingJoins::isShown).count();
    return new RingJoins(joins.size() - (int) shown, lines);
  }

  private static JoinsInLine line(List<Place> joins, int to) {
    List<JoinMark> marks =
        IntStream.range(0, MOST)
            .map(i -> joins.size() - MOST + i)
            .mapToObj(i -> i < 0 ? NONE : OptionalDouble.of(joins.get(i).mark()))
            .map(JoinMark::new)
            .toList();
    return new JoinsInLine(to, marks);
  }

  private static boolean isShown(JoinMark join) {
    return join.mark().isPresent();
  }
}
