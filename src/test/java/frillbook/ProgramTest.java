package frillbook;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

/** A check that needs a program which is not there. */
final class ProgramTest {
  private static final String DEMANDED = "FRILLBOOK_REQUIRE_NOTHING";

  private final Program absent = new Program("no-program-has-this-name", DEMANDED);

  @AfterEach
  void demandNothing() {
    System.clearProperty(DEMANDED);
  }

  @Test
  void itIsSkippedWhereNobodyDemandsTheProgram() {
    assertThrows(TestAbortedException.class, absent::requireOrSkip);
  }

  @Test
  void itFailsWhereTheProgramIsDemanded() {
    System.setProperty(DEMANDED, "true");
    var failure = assertThrows(AssertionError.class, absent::requireOrSkip);
    assertTrue(failure.getMessage().startsWith("no-program-has-this-name is demanded by"));
  }

  @Test
  void aProgramThatIsThereIsFound() {
    assertTrue(new Program("sh", DEMANDED).isPresent());
  }
}
