package frillbook.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a client reads, by hand: lengths as a tape has them, no zeros, halves up. */
final class SentencesTest {
  /** Numbers that one program or another writes with a tail, or takes for less than a half. */
  static TrialBrief awkward() {
    return TrialBrief.preset(Trials.TEMPLATE, Trials.CM)
        .with("diameter", 33.13)
        .with("frill_height", 4.35)
        .with("join_allowance", 0.563)
        .with("tax_rate", 0.0725)
        .with("deposit_rate", 0.3325)
        .titled("awkward decimals");
  }

  private static List<String> sentences(TrialBrief brief) {
    SheetValues sheet = Trials.given(brief);
    return Trials.workbook(brief.unit()).formulaCells().stream()
        .filter(cell -> List.of("Client", "Method").contains(cell.getSheet().getSheetName()))
        .map(cell -> sheet.value(cell).toString())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "each 33.1 cm across",
    "4.4 cm high",
    "French seams (0.6 cm",
    "sales tax of 7.25%.",
    "33.3% of the price"
  })
  void aNumberIsReadAsAPersonWouldWriteIt(String words) {
    List<String> sentences = sentences(awkward().with("quantity", 2.0));
    assertEquals(1, sentences.stream().filter(text -> text.contains(words)).count(), words);
  }

  @ParameterizedTest
  @CsvSource({"40,40 cm", "40.5,40.5 cm", "40.25,40.3 cm", "40.04,40 cm"})
  void zerosAtTheEndAreLeftOut(double diameter, String words) {
    TrialBrief brief = awkward().with("quantity", 2.0).with("diameter", diameter);
    assertTrue(sentences(brief).stream().anyMatch(text -> text.contains("each " + words)), words);
  }
}
