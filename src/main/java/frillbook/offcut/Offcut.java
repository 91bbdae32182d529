package frillbook.offcut;

import frillbook.brief.Grain;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The largest rectangle that is left in one piece, of those looked at.
 *
 * @param tableLength of the table on which the longest strip lies flat while it is marked
 * @param leftovers one for every place, in their order
 * @param remnantLength along the selvage
 * @param remnantWidth at right angles to the selvage
 * @param remnantPlace where it lies
 */
public record Offcut(
    double tableLength,
    StraightRoom straight,
    BiasRoom bias,
    List<Leftover> leftovers,
    double remnantLength,
    double remnantWidth,
    Place remnantPlace) {

  public static Offcut of(OnTable table) {
    StraightRoom straight = StraightRoom.of(table);
    BiasRoom bias = BiasRoom.of(table);
    List<Leftover> leftovers =
        everyPlace(table.isBias() ? bias.leftovers(table) : straight.leftovers(table));
    Leftover largest = largest(leftovers);
    boolean turned = table.grain() == Grain.CROSSWISE;
    return new Offcut(
        table.tableLength(),
        straight,
        bias,
        leftovers,
        turned ? largest.leftoverStack() : largest.leftoverRun(),
        turned ? largest.leftoverRun() : largest.leftoverStack(),
        largest.leftoverPlace());
  }

  /** Places of the other kind of grain hold nothing. */
  private static List<Leftover> everyPlace(List<Leftover> found) {
    Map<Place, Leftover> places = new EnumMap<>(Place.class);
    Stream.of(Place.values()).forEach(place -> places.put(place, Leftover.of(place, 0, 0)));
    found.forEach(leftover -> places.put(leftover.leftoverPlace(), leftover));
    return Arrays.stream(Place.values()).map(places::get).toList();
  }

  /** Of equally large ones the first. */
  private static Leftover largest(List<Leftover> leftovers) {
    return leftovers.stream()
        .sorted(Comparator.comparingDouble(Leftover::leftoverArea).reversed())
        .findFirst()
        .orElseThrow();
  }
}
