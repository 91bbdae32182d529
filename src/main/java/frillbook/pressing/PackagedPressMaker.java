package frillbook.pressing;

import frillbook.measure.LengthUnit;
import frillbook.press.PackagedPress;
import frillbook.press.Press;
import frillbook.reading.TemplateReader;
import frillbook.source.TemplateSource;
import frillbook.template.WorkbookTemplate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Makes the presses that the program brings along; the build runs it. */
public final class PackagedPressMaker {
  private PackagedPressMaker() {}

  /**
   * Makes them anew where something is younger than they are.
   *
   * @param args the folder of the compiled program, its templates among it
   */
  public static void main(String[] args) throws IOException {
    Path classes = Path.of(args[0]);
    if (!isUpToDate(classes)) {
      WorkbookTemplate template = TemplateReader.read(TemplateSource.packaged());
      List<Press> presses =
          Arrays.stream(LengthUnit.values())
              .parallel()
              .map(unit -> PressMaker.of(template, unit))
              .toList();
      for (Press press : presses) {
        PackagedPress.put(press, classes);
      }
    }
  }

  private static boolean isUpToDate(Path classes) throws IOException {
    for (LengthUnit unit : LengthUnit.values()) {
      Path press = PackagedPress.place(classes, unit);
      if (!Files.exists(press) || isYounger(classes, Files.getLastModifiedTime(press))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isYounger(Path folder, FileTime press) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.toString().endsWith(".press")
            && Files.getLastModifiedTime(file).compareTo(press) > 0) {
          return true;
        }
      }
    }
    return false;
  }
}
