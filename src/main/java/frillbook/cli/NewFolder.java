package frillbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Puts text files into a folder of their own, all of them or none. */
final class NewFolder {
  private static final String OTHER_PLACE = " Name another folder.";

  private NewFolder() {}

  /**
   * Writes the files beside {@code target} and moves them into place.
   *
   * @param files the text of each by its name
   * @throws Refusal when the folder holds anything, is none, or cannot be written
   */
  static void write(Map<String, String> files, Path target) {
    Path place = target.toAbsolutePath().normalize();
    if (Files.exists(place) && !isEmptyFolder(place)) {
      throw refusal(target + " already exists and is not an empty folder.");
    } else if (place.getParent() != null && !Files.isDirectory(place.getParent())) {
      throw new Refusal(
          Refusal.CANNOT, "The folder for " + target + " was not found. Make it first.");
    }
    try {
      writeBeside(files, place);
    } catch (IOException e) {
      throw refusal(target + " cannot be written.");
    }
  }

  private static Refusal refusal(String sentence) {
    return new Refusal(Refusal.CANNOT, sentence + OTHER_PLACE);
  }

  private static boolean isEmptyFolder(Path place) {
    if (!Files.isDirectory(place)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(place)) {
      return inside.findAny().isEmpty();
    } catch (IOException e) {
      return false;
    }
  }

  private static void writeBeside(Map<String, String> files, Path place) throws IOException {
    Path part = place.resolveSibling("." + place.getFileName() + ".part");
    List<Path> written = new ArrayList<>();
    try {
      Files.createDirectories(part);
      for (Map.Entry<String, String> file : files.entrySet()) {
        Path path = part.resolve(file.getKey());
        written.add(path);
        Files.writeString(path, file.getValue());
      }
      move(part, written, place);
    } finally {
      remove(written, part);
    }
  }

  /** A folder that is there stays the one it is: a person may stand in it. */
  private static void move(Path part, List<Path> written, Path place) throws IOException {
    if (Files.exists(place)) {
      fill(written, place);
    } else {
      Files.move(part, place);
    }
  }

  private static void fill(List<Path> written, Path place) throws IOException {
    List<Path> moved = new ArrayList<>();
    try {
      for (Path path : written) {
        moved.add(Files.move(path, place.resolve(path.getFileName())));
      }
    } catch (IOException e) {
      remove(moved);
      throw e;
    }
  }

  private static void remove(List<Path> written, Path part) throws IOException {
    if (Files.isDirectory(part)) {
      remove(written);
      Files.delete(part);
    }
  }

  private static void remove(List<Path> files) throws IOException {
    for (Path file : files) {
      Files.deleteIfExists(file);
    }
  }
}
