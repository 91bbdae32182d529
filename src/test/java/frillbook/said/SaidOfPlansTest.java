package frillbook.said;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.measure.LengthUnit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the workbooks of eight plans say, against a text that was read through: a sentence that
 * changes is read once more before it is accepted. The texts stand in the folder {@code said} of
 * the test resources; what is said now is written to {@code target/said}.
 */
class SaidOfPlansTest {
  private static final Path NOW = Path.of("target", "said");

  /** The plans, each with what it is there for. */
  enum Said {
    ONE_JOIN(LengthUnit.INCH, Map.of("diameter", 6.0), "join_count", 1.0),
    NO_SHORT_STRIP(LengthUnit.INCH, Map.of("matching_discs", 0.0), "odd_count", 0.0),
    NO_MATCHING_DISC(
        LengthUnit.CM,
        Map.of("matching_discs", 0.0, "grain", "lengthwise"),
        "matching_disc_count",
        0.0),
    FRENCH(LengthUnit.CM, Map.of("join_finish", "french", "quantity", 2.0), "seam_loss", 3.0),
    BIAS(LengthUnit.INCH, Map.of("grain", "bias", "matching_discs", 2.0), "is_bias", 1.0),
    RINGS(
        LengthUnit.CM,
        Map.of("row_style", "rings", "back_style", "zipped_halves"),
        "is_spiral",
        0.0),
    STOP(LengthUnit.INCH, Map.of("centre_gap", 8.75), "plan_ok", 0.0),
    ORDER_OF_TWELVE(
        LengthUnit.INCH, Map.of("quantity", 12.0, "grain", "lengthwise"), "quantity", 12.0);

    private final LengthUnit unit;
    private final Map<String, Object> changed;
    private final String name;
    private final double value;

    Said(LengthUnit unit, Map<String, Object> changed, String name, double value) {
      this.unit = unit;
      this.changed = changed;
      this.name = name;
      this.value = value;
    }

    private SaidPlan plan() {
      return SaidPlan.of(unit, changed);
    }

    private String file() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".txt";
    }
  }

  @ParameterizedTest
  @EnumSource
  void whatAWorkbookSaysWasReadThrough(Said said) throws IOException {
    List<String> now = said.plan().lines();
    Files.createDirectories(NOW);
    Files.write(NOW.resolve(said.file()), now);
    List<String> accepted = read(said.file());
    assertTrue(now.equals(accepted), () -> difference(said, accepted, now));
  }

  @ParameterizedTest
  @EnumSource
  void aPlanIsWhatItIsThereFor(Said said) {
    assertEquals(said.value, (Double) said.plan().value(said.name), 1e-6);
  }

  /** The lines that went and the lines that came, each side in its order. */
  private static String difference(Said said, List<String> accepted, List<String> now) {
    Stream<String> gone =
        accepted.stream().filter(line -> !now.contains(line)).map(line -> "- " + line);
    Stream<String> come =
        now.stream().filter(line -> !accepted.contains(line)).map(line -> "+ " + line);
    return Stream.concat(gone, come)
        .collect(
            Collectors.joining(
                "\n",
                "\n",
                "\nRead "
                    + NOW.resolve(said.file())
                    + "; where it is right, put it into the folder."));
  }

  private static List<String> read(String file) {
    try (InputStream in = SaidOfPlansTest.class.getResourceAsStream("/frillbook/said/" + file)) {
      return in == null
          ? List.of()
          : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
