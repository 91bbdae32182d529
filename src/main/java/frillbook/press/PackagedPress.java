package frillbook.press;

import frillbook.measure.LengthUnit;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The presses of the built-in templates, which the build makes and the program brings along. */
public final class PackagedPress {
  private static final String FOLDER = "frillbook/press/";

  private PackagedPress() {}

  /**
   * The press of the built-in templates for that unit.
   *
   * @throws IllegalStateException when the program was put together without it
   */
  public static Press of(LengthUnit unit) {
    String resource = "/" + FOLDER + file(unit);
    try (InputStream in = PackagedPress.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is not there; mvn compile makes it");
      }
      return PressReader.read(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where the press for {@code unit} is kept among the program's {@code classes}. */
  public static Path place(Path classes, LengthUnit unit) {
    return classes.resolve(FOLDER).resolve(file(unit));
  }

  /** Puts {@code press} where {@link #of} finds it. */
  public static void put(Press press, Path classes) throws IOException {
    Path place = place(classes, press.unit());
    Files.createDirectories(place.getParent());
    try (var out = new BufferedOutputStream(Files.newOutputStream(place))) {
      PressWriter.write(press, out);
    }
  }

  private static String file(LengthUnit unit) {
    return unit.name().toLowerCase(Locale.ROOT) + ".press";
  }
}
