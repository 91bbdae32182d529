package frillbook.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamedRecordsTest {
  enum Edge implements Coded {
    RAW,
    NARROW_HEM
  }

  record Frill(double frillHeight, Edge edgeFinish) {}

  record Order(String maker, Frill frill, int quantity) {}

  private static Order order(Map<String, ?> values) {
    return NamedRecords.build(Order.class, Map.of("maker", "workroom"), values);
  }

  @Test
  void valuesFindTheirPlaceByName() {
    var made = order(Map.of("frill_height", 2, "edge_finish", "narrow_hem", "quantity", 3.0));
    assertEquals(new Order("workroom", new Frill(2, Edge.NARROW_HEM), 3), made);
  }

  record Task(double rate, double setup) {}

  record Times(@Prefixed("gather") Task gather, @Prefixed("sew_rows") Task sewRows) {}

  @Test
  void aPrefixIsPartOfTheNamesWithinIt() {
    Map<String, Object> values =
        Map.of("gather_rate", 3.5, "gather_setup", 10, "sew_rows_rate", 4, "sew_rows_setup", 5);
    assertEquals(
        new Times(new Task(3.5, 10), new Task(4, 5)),
        NamedRecords.build(Times.class, Map.of(), values));
  }

  record Tasks(@Prefixed("gather") Optional<Task> gather, int rows) {}

  private static Tasks tasks(Map<String, ?> values) {
    return NamedRecords.build(Tasks.class, Map.of(), values);
  }

  @Test
  void whatIsLeftOutAltogetherIsEmpty() {
    assertEquals(new Tasks(Optional.empty(), 2), tasks(Map.of("rows", 2)));
    assertEquals(
        new Tasks(Optional.empty(), 2),
        tasks(Map.of("rows", 2, "gather_rate", "", "gather_setup", "")));
  }

  @Test
  void whatIsThereIsMadeWhole() {
    var made = tasks(Map.of("rows", 2, "gather_rate", 3.5, "gather_setup", 10));
    assertEquals(new Tasks(Optional.of(new Task(3.5, 10)), 2), made);
  }

  @Test
  void whatIsThereInPartIsRefusedByName() {
    var refusal =
        assertThrows(
            IllegalArgumentException.class, () -> tasks(Map.of("rows", 2, "gather_rate", 3.5)));
    assertEquals("gather_setup has no usable value: null", refusal.getMessage());
  }

  @Test
  void namesOfAnOptionalRecordMayBeWithoutAValue() {
    assertEquals(Set.of("gather_rate", "gather_setup"), NamedRecords.optional(Tasks.class));
  }

  record Label(String clientWords, int copies) {}

  @Test
  void textIsTakenAsItStands() {
    assertEquals(
        new Label("For Ada, narrow hem", 2),
        NamedRecords.build(
            Label.class, Map.of(), Map.of("client_words", "For Ada, narrow hem", "copies", 2)));
  }

  @Test
  void aNumberInPlaceOfTextIsRefusedByName() {
    var refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                NamedRecords.build(Label.class, Map.of(), Map.of("client_words", 12, "copies", 2)));
    assertEquals("client_words has no usable value: 12", refusal.getMessage());
  }

  @Test
  void halfACushionIsRefusedByName() {
    assertRefused(
        "quantity has no usable value: 2.5",
        Map.of("frill_height", 2, "edge_finish", "raw", "quantity", 2.5));
  }

  @Test
  void aMissingValueIsRefusedByName() {
    assertRefused(
        "frill_height has no usable value: null", Map.of("edge_finish", "raw", "quantity", 1));
  }

  @Test
  void textInPlaceOfANumberIsRefusedByName() {
    assertRefused(
        "quantity has no usable value: two",
        Map.of("frill_height", 2, "edge_finish", "raw", "quantity", "two"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"frayed", "narrow hem", "NARROW_HEM"})
  void whatIsNoCodeIsRefusedByName(String word) {
    assertRefused(
        "edge_finish has no usable value: " + word,
        Map.of("frill_height", 2, "edge_finish", word, "quantity", 1));
  }

  private static void assertRefused(String message, Map<String, ?> values) {
    var refusal = assertThrows(IllegalArgumentException.class, () -> order(values));
    assertEquals(message, refusal.getMessage());
  }
}
