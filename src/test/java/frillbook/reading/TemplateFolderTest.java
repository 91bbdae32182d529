package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import frillbook.source.TemplateSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing but text within the folder is read; every file that is none is told. */
final class TemplateFolderTest {
  private static final String OUTSIDE =
      ", which lies outside the folder of the templates; expected a file within it;"
          + " copy it into the folder and correct the name";

  @TempDir private Path around;

  private Path folder;

  @BeforeEach
  void makeTheFolder() throws IOException {
    folder = Files.createDirectory(around.resolve("own"));
    Files.writeString(around.resolve("x.yaml"), "sheet: X\ntitle: X\nwidths: [9]\nrows: []\n");
  }

  private List<String> mistakes(String sheets) throws IOException {
    Files.writeString(folder.resolve("workbook.yaml"), "title: T\nsheets: [" + sheets + "]\n");
    return Written.mistakes(TemplateSource.directory(folder));
  }

  @Test
  void aFileAboveTheFolderIsTold() throws IOException {
    assertEquals(
        List.of("workbook.yaml:2:10: the file ../x.yaml" + OUTSIDE), mistakes("../x.yaml"));
  }

  @Test
  void aFileNamedFromTheRootIsTold() throws IOException {
    String file = around.resolve("x.yaml").toString();
    assertEquals(List.of("workbook.yaml:2:10: the file " + file + OUTSIDE), mistakes(file));
  }

  @Test
  void aLinkThatLeavesTheFolderIsTold() throws IOException {
    Files.createSymbolicLink(folder.resolve("link.yaml"), around.resolve("x.yaml"));
    assertEquals(
        List.of("workbook.yaml:2:10: the file link.yaml" + OUTSIDE), mistakes("link.yaml"));
  }

  @Test
  void aFolderReachedByALinkIsRead() throws IOException {
    Path link = Files.createSymbolicLink(around.resolve("link"), folder);
    Files.copy(around.resolve("x.yaml"), folder.resolve("x.yaml"));
    Files.writeString(folder.resolve("workbook.yaml"), "title: T\nsheets: [x.yaml]\n");
    assertEquals("X", TemplateReader.read(TemplateSource.directory(link)).sheets().get(0).name());
  }

  @Test
  void aFileThatIsTooLargeIsToldWithTheOtherMistakes() throws IOException {
    Files.writeString(folder.resolve("big.yaml"), "# 3\n".repeat(250_001));
    assertEquals(
        List.of(
            "workbook.yaml:2:10: the file big.yaml of 1000004 bytes; expected at most 1000000;"
                + " split it into several sheets",
            "workbook.yaml:2:20: the file none.yaml, which was not found; expected a file of that name among the"
                + " templates; add the file or correct the name"),
        mistakes("big.yaml, none.yaml"));
  }

  @Test
  void aFileThatIsNoTextIsTold() throws IOException {
    Files.write(folder.resolve("picture.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0});
    assertEquals(
        List.of(
            "workbook.yaml:2:10: the file picture.yaml, which is not UTF-8 text;"
                + " expected text in UTF-8; save it as UTF-8 in a text editor"),
        mistakes("picture.yaml"));
  }

  @Test
  void aNameThatNoFileCanHaveIsTold() throws IOException {
    assertEquals(
        "workbook.yaml:2:10: the file aU+0000.yaml, which was not found; expected a file of that name among the"
            + " templates; add the file or correct the name",
        mistakes("\"a\\0.yaml\"").get(1));
  }
}
