package frillbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import frillbook.measure.LengthUnit;
import frillbook.source.Mistake;
import frillbook.source.TemplateException;
import frillbook.source.TemplateSource;
import frillbook.template.LineTemplate;
import frillbook.template.Phrase;
import frillbook.template.Phrases;
import frillbook.template.RowTemplate;
import frillbook.template.SentenceTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A template's texts in another language. */
final class CatalogueTest {
  private static final String ROWS =
      """
        - note: Cut the bunting in {unit}.
        - line: flag_name
          label: Name
          unit: "-"
          format: text
          guard: none
          formula: '"pennant"&" – "&IF(1=1,"","long")'
          note: "–"
        - input: strings
          label: Strings
          part: p
          kind: count
          unit: "-"
          default: 3
          from: 1
          to: 9
          prompt: How many.
        - each: {w: [left, right]}
          rows:
            - note: "On the {w}"
        - sentence: "{strings, plural, one {1 string} other {# strings}} of {long_unit}"
          guard: none
      """;

  private static final Map<String, String> DUTCH =
      Map.ofEntries(
          Map.entry("A", "Aa"),
          Map.entry("T", "Titel"),
          Map.entry("Cut the bunting in {unit}.", "Knip de vlaggetjes in {unit}."),
          Map.entry("Name", "Naam"),
          Map.entry("pennant", "wimpel"),
          Map.entry("long", "lang"),
          Map.entry("Strings", "Slingers"),
          Map.entry("How many.", "Hoeveel."),
          Map.entry("On the left", "Links"),
          Map.entry("On the right", "Rechts"),
          Map.entry(
              "{strings, plural, one {1 string} other {# strings}} of {long_unit}",
              "{long_unit}: {strings, plural, one {een slinger} other {# slingers}}"));

  private static String entries(Map<String, String> texts) {
    return texts.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(each -> "- {text: '" + each.getKey() + "', says: '" + each.getValue() + "'}\n")
        .collect(Collectors.joining());
  }

  /** The phrases stay as they are; they are no matter here. */
  private static TemplateSource texts(Map<String, String> dutch) {
    String phrases =
        Written.read(ROWS).phrases().texts().values().stream()
            .distinct()
            .filter(text -> text.replaceAll("\\{\\w+}", "").matches(".*[a-zA-Z].*"))
            .map(text -> "- {text: '" + text + "', says: '" + text + "'}\n")
            .collect(Collectors.joining());
    return Written.files(
        Map.of(
            "workbook.yaml",
            entries(Map.of("T", "Titel")),
            "a.yaml",
            entries(dutch),
            Phrases.FILE,
            phrases.replace("'not checked yet'}", "'nog niet nagekeken'}")));
  }

  private static WorkbookTemplate read() {
    return TemplateReader.read(Written.rows(ROWS), texts(DUTCH));
  }

  private static void told(Map<String, String> dutch, String... messages) {
    TemplateException told =
        assertThrows(
            TemplateException.class, () -> TemplateReader.read(Written.rows(ROWS), texts(dutch)));
    assertEquals(List.of(messages), told.mistakes().stream().map(Mistake::toString).toList());
  }

  private static Map<String, String> with(String text, String says) {
    Map<String, String> dutch = new LinkedHashMap<>(DUTCH);
    dutch.put(text, says);
    return dutch;
  }

  @Test
  void whatAPersonReadsIsSaidInTheOtherLanguage() {
    WorkbookTemplate dutch = read();
    assertEquals("Titel", dutch.title());
    assertEquals("Aa", dutch.sheets().get(0).name());
    assertEquals("Slingers", dutch.inputs().get(0).label());
    assertEquals("Hoeveel.", dutch.inputs().get(0).prompt());
    assertEquals("nog niet nagekeken", dutch.phrases().say(Phrase.NOT_CHECKED));
    assertEquals(
        List.of("Knip de vlaggetjes in {unit}.", "Links", "Rechts"),
        dutch.rows(RowTemplate.Note.class).stream().map(RowTemplate.Note::text).toList());
  }

  @Test
  void aSentenceMayTurnItsWordsAround() {
    SentenceTemplate sentence = read().rows(SentenceTemplate.class).get(0);
    assertEquals("m: 4 slingers", sentence.text().wording().say(name -> 4.0, LengthUnit.CM));
    assertEquals("m: een slinger", sentence.text().wording().say(name -> 1.0, LengthUnit.CM));
  }

  @Test
  void textsThatAFormulaGivesAreSaidToo() {
    LineTemplate line = read().lines().get(0);
    assertEquals(
        "\"wimpel\"&\" – \"&IF(1=1,\"\",\"lang\")", line.formula().render(token -> token.text()));
  }

  @Test
  void aTextWithoutItsTwinIsTold() {
    Map<String, String> dutch = new LinkedHashMap<>(DUTCH);
    dutch.remove("Strings");
    told(
        dutch,
        "a.yaml:14:12: the text Strings without its twin; expected an entry for it in texts/a.yaml;"
            + " add - text: … and says: …");
  }

  @Test
  void aTwinThatLosesAUnitIsTold() {
    told(
        with("Cut the bunting in {unit}.", "Knip de vlaggetjes."),
        "texts/a.yaml:2:47: a twin without {unit}; expected what its text says, and no more;"
            + " correct the names in braces");
  }

  @Test
  void aTwinThatInventsAValueIsTold() {
    told(
        with(
            "{strings, plural, one {1 string} other {# strings}} of {long_unit}",
            "{long_unit}: {string, number, 0}"),
        "texts/a.yaml:11:87: a twin without {strings} with {string}; expected what its text says,"
            + " and no more; correct the names in braces",
        "texts/a.yaml:11:101: the unknown name string; expected the name of an input or a line;"
            + " correct it or add what it names (did you mean strings?)");
  }

  @Test
  void aTwinOfNothingIsTold() {
    told(
        with("Stringz", "Slingers"),
        "texts/a.yaml:8:28: a twin of Stringz, which the template does not say; expected texts of"
            + " the template; take it out or correct its text");
  }

  @Test
  void theSameTextTwiceIsTold() {
    TemplateSource once = texts(DUTCH);
    TemplateSource twice =
        file -> once.text(file).map(text -> file.equals("workbook.yaml") ? text + text : text);
    TemplateException told =
        assertThrows(TemplateException.class, () -> TemplateReader.read(Written.rows(ROWS), twice));
    assertEquals(
        "texts/workbook.yaml:2:11: the text T twice; expected each text once; take one out",
        told.getMessage());
  }
}
