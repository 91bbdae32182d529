package frillbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The walls between the packages, read off the import lines. */
class HousePlanTest {
  private static final Path SOURCES = Path.of("src/main/java/frillbook");

  private static final Pattern IMPORT =
      Pattern.compile("^import (?:static )?([a-z0-9_.]+)\\.[A-Z]", Pattern.MULTILINE);

  private static final Pattern PACKAGE =
      Pattern.compile("^package frillbook\\.([a-z]+);", Pattern.MULTILINE);

  /** In order of dependence: each may use those before it. */
  private static final List<String> ORDER =
      List.of(
          "measure",
          "naming",
          "brief",
          "rows",
          "strip",
          "cutting",
          "straight",
          "bias",
          "grains",
          "discs",
          "offcut",
          "fill",
          "thread",
          "money",
          "materials",
          "time",
          "picture",
          "plan",
          "wording",
          "source",
          "formula",
          "template",
          "proofreading",
          "reading",
          "press",
          "look",
          "calculation",
          "chart",
          "workbook",
          "pressing",
          "client",
          "cli");

  private static final Set<String> DOMAIN = Set.copyOf(ORDER.subList(0, ORDER.indexOf("source")));

  private static final Set<String> WRITING =
      Set.of("look", "calculation", "chart", "workbook", "pressing", "client");

  /** Who may use a library; formula asks POI whether a formula parses. */
  private static final Map<String, Set<String>> LIBRARIES =
      Map.of(
          "org.apache.poi.ss.formula", union(WRITING, Set.of("formula")),
          "org.apache.poi.xssf.usermodel", union(WRITING, Set.of("cli")),
          "org.apache.poi", WRITING,
          "org.openxmlformats", WRITING,
          "javax.xml", WRITING,
          "org.apache.xmlbeans", WRITING,
          "picocli", Set.of("cli"),
          "com.fasterxml.jackson", Set.of("cli"),
          "org.apache.commons.compress", Set.of("press"),
          "org.snakeyaml", Set.of("source", "reading"));

  @Test
  void everyPackageHasItsPlaceInTheOrder() {
    assertEquals(new TreeSet<>(ORDER), imports().keySet());
  }

  @Test
  void thereAreImportsToRead() {
    long read = imports().values().stream().mapToLong(Set::size).sum();
    assertTrue(read > ORDER.size(), read + " imports");
  }

  @Test
  void thePlanItselfUsesNothingButJava() {
    assertNone((user, used) -> DOMAIN.contains(user) && !used.startsWith("java.") && !isOurs(used));
  }

  @Test
  void everyPackageUsesOnlyThoseBeforeIt() {
    assertNone((user, used) -> isOurs(used) && ORDER.indexOf(inside(used)) > ORDER.indexOf(user));
  }

  @Test
  void librariesAreUsedWhereTheyBelong() {
    assertNone((user, used) -> !isOurs(used) && !used.startsWith("java.") && !may(user, used));
  }

  /** So that whoever opens a package finds its classes at a glance. */
  @Test
  void noPackageHoldsMoreThanThirtyClasses() throws IOException {
    Map<String, Long> crowded = new TreeMap<>();
    for (String name : ORDER) {
      try (Stream<Path> files = Files.list(SOURCES.resolve(name))) {
        long classes = files.filter(file -> !file.endsWith("package-info.java")).count();
        if (classes > 30) {
          crowded.put(name, classes);
        }
      }
    }
    assertEquals(Map.of(), crowded);
  }

  /** The longest entry that {@code used} begins with decides. */
  private static boolean may(String user, String used) {
    return LIBRARIES.entrySet().stream()
        .filter(library -> used.startsWith(library.getKey()))
        .max(Map.Entry.comparingByKey())
        .map(library -> library.getValue().contains(user))
        .orElse(false);
  }

  private interface Breach {
    boolean is(String user, String used);
  }

  private static void assertNone(Breach breach) {
    Set<String> found = new TreeSet<>();
    imports()
        .forEach(
            (user, all) ->
                all.stream()
                    .filter(used -> breach.is(user, used))
                    .forEach(used -> found.add(user + " uses " + used)));
    assertEquals(Set.of(), found);
  }

  private static boolean isOurs(String used) {
    return used.startsWith("frillbook.");
  }

  private static String inside(String used) {
    return used.substring("frillbook.".length());
  }

  /** Packages imported, by the package that imports them. */
  private static Map<String, Set<String>> imports() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(HousePlanTest::text)
          .collect(
              Collectors.toMap(
                  HousePlanTest::packageOf,
                  HousePlanTest::importsOf,
                  HousePlanTest::union,
                  TreeMap::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String packageOf(String source) {
    Matcher matcher = PACKAGE.matcher(source);
    assertTrue(matcher.find(), source);
    return matcher.group(1);
  }

  private static Set<String> importsOf(String source) {
    return IMPORT.matcher(source).results().map(m -> m.group(1)).collect(Collectors.toSet());
  }

  private static Set<String> union(Set<String> one, Set<String> other) {
    Set<String> both = new TreeSet<>(one);
    both.addAll(other);
    return both;
  }
}
