package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import frillbook.cli.Frillbook;
import frillbook.source.TemplateSource;
import frillbook.template.ChartTemplate;
import frillbook.wording.CodeWord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The table of words in DEVELOPERS.md: what a user reads has none that it replaces. */
final class WordListTest {
  private static final Pattern TERM = Pattern.compile("`([^`]+)`");

  /** As Java has it, without blocks of text. */
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

  /** A lone option is what a person may type; what is said of it is a sentence. */
  private static final Pattern LONE_OPTION = Pattern.compile("--[a-z-]+");

  private static final Map<String, Pattern> REPLACED = replaced();

  private static Map<String, Pattern> replaced() {
    Map<String, Pattern> terms = new LinkedHashMap<>();
    try (Stream<String> lines = Files.lines(Path.of("DEVELOPERS.md"))) {
      lines
          .dropWhile(line -> !line.equals("| word | meaning | in place of |"))
          .skip(2)
          .takeWhile(line -> line.startsWith("|"))
          .map(line -> line.substring(line.lastIndexOf('|', line.length() - 3)))
          .flatMap(last -> TERM.matcher(last).results())
          .map(found -> found.group(1))
          .forEach(term -> terms.put(term, pattern(term)));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return terms;
  }

  /** In any case, unless the term is all capitals; not the second of a pair, as in zip (zipper). */
  private static Pattern pattern(String term) {
    boolean capitals = term.equals(term.toUpperCase(Locale.ROOT));
    String before = Character.isLetter(term.charAt(0)) ? "(?<![A-Za-z(])" : "";
    String after = Character.isLetter(term.charAt(term.length() - 1)) ? "s?(?![A-Za-z])" : "";
    return Pattern.compile(
        before + Pattern.quote(term) + after, capitals ? 0 : Pattern.CASE_INSENSITIVE);
  }

  /** Each with the replaced words in it. */
  private static List<String> found(Stream<String> texts) {
    List<String> found = new ArrayList<>();
    texts.forEach(
        text ->
            REPLACED.forEach(
                (term, pattern) -> {
                  if (pattern.matcher(text).find()) {
                    found.add(term + " in: " + text.strip());
                  }
                }));
    return found;
  }

  private static void none(List<String> texts, int atLeast) {
    assertTrue(texts.size() >= atLeast, texts.size() + " texts");
    assertEquals("", String.join("\n", found(texts.stream())));
  }

  @Test
  void theTableIsRead() {
    assertTrue(REPLACED.size() > 40, REPLACED.keySet().toString());
    assertTrue(REPLACED.keySet().containsAll(Set.of("cloth", "MIND", "--set", "chart:")));
  }

  @Test
  void aReplacedWordIsFoundAndAPairIsNot() {
    assertEquals(
        List.of(
            "cloth in: Cloths to buy",
            "along_ in: along_strip_length",
            "spool in: a spool of thread",
            "MIND in: READY, MIND, STOP"),
        found(
            Stream.of(
                "Cloths to buy",
                "along_strip_length",
                "a spool of thread",
                "READY, MIND, STOP",
                "keep in mind",
                "clothing",
                "a reel (spool) of thread")));
  }

  @Test
  void textsOfTheTemplatesHaveNone() {
    Set<String> texts = new TreeSet<>();
    MarkedTexts.texts(TemplateSource.packaged()).values().forEach(texts::addAll);
    none(List.copyOf(texts), 1000);
  }

  @Test
  void namesHaveNone() {
    Set<String> names = new TreeSet<>();
    Trials.TEMPLATE
        .inputs()
        .forEach(
            input -> {
              names.add(input.name());
              input.choices().stream().map(CodeWord::code).forEach(names::add);
            });
    Trials.TEMPLATE
        .lines()
        .forEach(
            line -> {
              names.add(line.name());
              line.words().stream().map(CodeWord::code).forEach(names::add);
            });
    Trials.TEMPLATE.checks().forEach(check -> names.add(check.name()));
    Trials.TEMPLATE
        .tables()
        .forEach(
            table -> {
              names.add(table.name());
              table.blocks().forEach(block -> names.add(block.name()));
              table
                  .columns()
                  .forEach(
                      column -> {
                        names.add(column.name());
                        column.words().stream().map(CodeWord::code).forEach(names::add);
                      });
            });
    Trials.TEMPLATE.sheets().stream()
        .flatMap(sheet -> sheet.rows(ChartTemplate.class).stream())
        .forEach(picture -> names.add(picture.name()));
    none(List.copyOf(names), 500);
  }

  @Test
  void helpHasNone() {
    CommandLine program = Frillbook.commandLine();
    List<String> lines =
        Stream.concat(Stream.of(program), program.getSubcommands().values().stream())
            .flatMap(command -> command.getUsageMessage().lines())
            .toList();
    none(lines, 50);
  }

  /** Whatever the program may say stands between quotation marks somewhere. */
  @Test
  void messagesHaveNone() throws IOException {
    List<String> literals = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        Matcher literal = LITERAL.matcher(withoutDocs(Files.readString(file)));
        literal
            .results()
            .map(found -> found.group(1))
            .filter(text -> !LONE_OPTION.matcher(text).matches())
            .forEach(literals::add);
      }
    }
    none(literals, 1000);
  }

  private static String withoutDocs(String code) {
    return code.lines()
        .filter(line -> !line.strip().startsWith("*") && !line.strip().startsWith("/"))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void theReadmeHasNone() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    List<String> paragraphs =
        Stream.of(readme.split("\n\n|\n(?=\\|)"))
            .map(text -> text.replaceAll("\\s+", " "))
            .toList();
    none(paragraphs, 50);
  }
}
