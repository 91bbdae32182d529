package frillbook.template;

import frillbook.source.Position;
import java.util.List;
import java.util.Optional;

/**
 * A chart that redraws itself, under a sentence that states what it shows.
 *
 * @param name of the drawn object, in the program's list of objects
 * @param label what the chart is, for those who cannot see it
 * @param title the sentence above it; of no parts where there is none
 * @param guard name of the line that must be 1 for the sentence to be shown; empty for always
 * @param alt what can be seen in it, for those who cannot
 * @param height in rows of the sheet, the sentence left out
 * @param smooth whether lines bend through their points; of the whole chart, as LibreOffice bends
 *     every series like the first
 * @param x the axis across
 * @param y the axis upwards
 * @param series at least one; a later one is drawn over an earlier one
 */
public record ChartTemplate(
    String name,
    String label,
    ChartKind kind,
    WordingText title,
    Optional<String> guard,
    String alt,
    int height,
    boolean smooth,
    AxisTemplate x,
    AxisTemplate y,
    List<SeriesTemplate> series,
    Position position)
    implements RowTemplate {
  public ChartTemplate {
    series = List.copyOf(series);
  }

  /** Rows of its columns that are no points of a series: those by which another is turned. */
  public int mostTurn() {
    return series.stream().mapToInt(SeriesTemplate::turn).max().orElse(0);
  }

  /**
   * Whether a sentence stands above it; one without takes no rows: it lies on those that follow.
   */
  public boolean isTitled() {
    return !title.wording().parts().isEmpty();
  }

  /** The sentence above the chart. */
  public SentenceTemplate sentence() {
    return new SentenceTemplate(title, guard, position);
  }
}
