package frillbook.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorkbookFileTest {
  private final byte[] bytes = {1, 2, 3};

  @TempDir Path folder;

  @Test
  void aNewFileIsWritten() throws IOException {
    Path target = folder.resolve("plan.xlsx");
    WorkbookFile.save(bytes, target, false);
    assertArrayEquals(bytes, Files.readAllBytes(target));
    assertEquals(List.of(target), listed());
  }

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    Path target = Files.writeString(folder.resolve("plan.xlsx"), "mine");
    WorkbookFileException told =
        assertThrows(WorkbookFileException.class, () -> WorkbookFile.save(bytes, target, false));
    assertEquals(WorkbookFileException.Reason.EXISTS, told.reason());
    assertEquals(target + " already exists", told.getMessage());
    assertEquals("mine", Files.readString(target));
  }

  @Test
  void overwritingReplacesTheFile() throws IOException {
    Path target = Files.writeString(folder.resolve("plan.xlsx"), "mine");
    WorkbookFile.save(bytes, target, true);
    assertArrayEquals(bytes, Files.readAllBytes(target));
    assertEquals(List.of(target), listed());
  }

  @Test
  void aFolderThatIsNotThereIsTold() {
    Path target = folder.resolve("nowhere").resolve("plan.xlsx");
    WorkbookFileException told =
        assertThrows(WorkbookFileException.class, () -> WorkbookFile.save(bytes, target, true));
    assertEquals(WorkbookFileException.Reason.NO_FOLDER, told.reason());
    assertEquals("The folder for " + target + " was not found", told.getMessage());
  }

  @Test
  void aFolderInThePlaceOfTheFileIsTold() {
    WorkbookFileException told =
        assertThrows(WorkbookFileException.class, () -> WorkbookFile.save(bytes, folder, true));
    assertEquals(WorkbookFileException.Reason.NOT_WRITABLE, told.reason());
    assertEquals(folder + " cannot be written", told.getMessage());
  }

  /** A pipe stands for every device: what is moved into its place is in its place for good. */
  @Test
  void aDeviceInThePlaceOfTheFileStays() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    WorkbookFileException told =
        assertThrows(WorkbookFileException.class, () -> WorkbookFile.save(bytes, pipe, true));
    assertEquals(WorkbookFileException.Reason.NOT_WRITABLE, told.reason());
    assertFalse(Files.isRegularFile(pipe));
    assertEquals(List.of(pipe), listed());
  }

  private List<Path> listed() throws IOException {
    try (var files = Files.list(folder)) {
      return files.toList();
    }
  }
}
