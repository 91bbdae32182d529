package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the jar that is handed out carries beside our classes. */
class JarContentsTest {
  private static final long LARGEST = 25_000_000;

  private static final String LICENCES = "META-INF/licenses/";

  /** Where the classes of each bundled library lie. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry("commons-codec", List.of("org/apache/commons/codec/")),
          Map.entry("commons-collections4", List.of("org/apache/commons/collections4/")),
          Map.entry("commons-compress", List.of("org/apache/commons/compress/")),
          Map.entry("commons-io", List.of("org/apache/commons/io/")),
          Map.entry("commons-lang3", List.of("org/apache/commons/lang3/")),
          Map.entry("commons-math3", List.of("org/apache/commons/math3/")),
          Map.entry("curvesapi", List.of("com/graphbuilder/")),
          Map.entry("jackson-core", List.of("com/fasterxml/jackson/core/")),
          Map.entry("log4j-api", List.of("org/apache/logging/log4j/")),
          Map.entry("picocli", List.of("picocli/")),
          Map.entry("poi", List.of("org/apache/poi/")),
          Map.entry("poi-ooxml", List.of("org/apache/poi/xssf/", "org/apache/poi/ooxml/")),
          Map.entry(
              "poi-ooxml-lite",
              List.of(
                  "org/apache/poi/schemas/",
                  "org/openxmlformats/schemas/",
                  "com/microsoft/schemas/",
                  "org/etsi/uri/",
                  "org/w3/x2000/")),
          Map.entry("snakeyaml-engine", List.of("org/snakeyaml/engine/")),
          Map.entry("SparseBitSet", List.of("com/zaxxer/sparsebits/")),
          Map.entry("xmlbeans", List.of("org/apache/xmlbeans/")));

  /** Their jars bring no text; the licence is the one that their authors name. */
  private static final Set<String> WITHOUT_TEXT =
      Set.of("curvesapi", "picocli", "snakeyaml-engine", "SparseBitSet");

  private static JarFile jar;

  @BeforeAll
  static void open() throws IOException {
    jar = new JarFile(PackagedJar.FILE.toFile());
  }

  @AfterAll
  static void close() throws IOException {
    jar.close();
  }

  private static byte[] bytes(String entry) throws IOException {
    JarEntry found = jar.getJarEntry(entry);
    assertNotNull(found, entry);
    return jar.getInputStream(found).readAllBytes();
  }

  private static String text(String entry) throws IOException {
    return new String(bytes(entry), StandardCharsets.UTF_8);
  }

  @Test
  void itIsNoLargerThanItMayBe() throws IOException {
    long size = Files.size(PackagedJar.FILE);
    assertTrue(size <= LARGEST, size + " bytes");
  }

  @Test
  void ourLicenceAndNoticeAreThere() throws IOException {
    assertArrayEquals(Files.readAllBytes(Path.of("LICENSE")), bytes("META-INF/LICENSE"));
    assertArrayEquals(
        Files.readAllBytes(Path.of("src/main/resources/META-INF/NOTICE")),
        bytes("META-INF/NOTICE"));
  }

  @Test
  void theNoticeIsInOurNameAndHasNoYear() throws IOException {
    String notice = text("META-INF/NOTICE");
    assertEquals("frillbook", notice.lines().findFirst().orElseThrow());
    assertFalse(notice.matches("(?s).*\\b(19|20)\\d\\d\\b.*"), notice);
  }

  @Test
  void theNoticeNamesEveryLibrary() throws IOException {
    Set<String> named =
        text("META-INF/NOTICE")
            .lines()
            .filter(line -> line.startsWith("    "))
            .map(String::strip)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(LIBRARIES.keySet()), named);
  }

  @Test
  void everyClassIsOursOrOfALibraryThatIsKnown() {
    List<String> known = LIBRARIES.values().stream().flatMap(List::stream).toList();
    Set<String> others =
        jar.stream()
            .map(JarEntry::getName)
            .filter(name -> name.endsWith(".class"))
            .map(name -> name.replaceFirst("^META-INF/versions/\\d+/", ""))
            .filter(name -> !name.startsWith("frillbook/"))
            .filter(name -> known.stream().noneMatch(name::startsWith))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), others);
  }

  @Test
  void everyLibraryThatIsKnownIsInIt() {
    Set<String> entries = jar.stream().map(JarEntry::getName).collect(Collectors.toSet());
    LIBRARIES.forEach(
        (library, places) ->
            assertTrue(
                places.stream().allMatch(p -> entries.stream().anyMatch(e -> e.startsWith(p))),
                library));
  }

  @Test
  void everyLibraryHasItsLicenceAndNotice() {
    Set<String> entries = jar.stream().map(JarEntry::getName).collect(Collectors.toSet());
    for (String library : LIBRARIES.keySet()) {
      for (String kind : List.of("LICENSE", "NOTICE")) {
        String place = LICENCES + library + "/" + kind;
        assertTrue(entries.contains(place) || entries.contains(place + ".txt"), place);
      }
    }
  }

  /**
   * Of the libraries whose own jars stand here on the class path; of the schemas the whole ones do,
   * which come with the same text.
   */
  @Test
  void theTextsAreThoseOfTheLibrariesThemselves() throws IOException {
    Set<String> compared = new TreeSet<>(WITHOUT_TEXT);
    for (String path : System.getProperty("java.class.path").split(File.pathSeparator)) {
      String file = Path.of(path).getFileName().toString();
      String library = file.replaceFirst("-\\d[\\d.]*\\.jar$", "").replace("-full", "-lite");
      if (LIBRARIES.containsKey(library) && sameTexts(Path.of(path), library)) {
        compared.add(library);
      }
    }
    assertEquals(new TreeSet<>(LIBRARIES.keySet()), compared);
  }

  private static boolean sameTexts(Path file, String library) throws IOException {
    int texts = 0;
    try (JarFile own = new JarFile(file.toFile())) {
      for (JarEntry entry : own.stream().toList()) {
        String name = entry.getName();
        if (name.matches("META-INF/[^/]*(LICENSE|NOTICE)[^/]*")) {
          String carried = LICENCES + library + name.substring("META-INF".length());
          byte[] expected = own.getInputStream(entry).readAllBytes();
          assertTrue(Arrays.equals(expected, bytes(carried)), carried);
          texts++;
        }
      }
    }
    return texts > 0;
  }

  /** The terms of the BSD licence that bind whoever hands on a binary. */
  @Test
  void theLicenceOfTheCurvesIsTheirOwn() throws IOException {
    String licence = text(LICENCES + "curvesapi/LICENSE");
    assertTrue(licence.startsWith("Copyright (c) 2005, Graph Builder\n"), licence);
    assertTrue(
        licence.contains("Redistributions in binary form must reproduce the above copyright"),
        licence);
    assertTrue(licence.contains("EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE."), licence);
  }

  @Test
  void theSchemasAreTheLiteOnes() {
    String beyondLite = "org/openxmlformats/schemas/drawingml/x2006/chart/CTLblOffset.class";
    assertEquals(null, jar.getJarEntry(beyondLite));
  }
}
