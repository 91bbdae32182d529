package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

/** What happens when a command meets what nobody foresaw. */
class FaultTest {
  private static final String SENTENCE =
      "This is a fault of frillbook itself and not of what you typed (%s)";

  @Command(name = "faulty")
  private record Faulty(Throwable fault) implements Runnable {
    @Override
    public void run() {
      if (fault instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) fault;
    }
  }

  private static Ran run(Throwable fault, String... args) {
    return Ran.run(Frillbook.commandLine().addSubcommand(new Faulty(fault)), args);
  }

  private static void isToldInOneSentence(String expected, Throwable fault) {
    assertEquals(
        Ran.refusal(
            70,
            String.format(SENTENCE, expected)
                + "; the same command with --debug says where it lies."),
        run(fault, "faulty"));
  }

  @Test
  void anExceptionIsToldInOneSentence() {
    isToldInOneSentence(
        "java.lang.IllegalStateException: no such ring",
        new IllegalStateException("no such ring\nlook for another"));
  }

  @Test
  void theMachinesGivingUpIsToldInOneSentence() {
    isToldInOneSentence(
        "java.lang.OutOfMemoryError: Java heap space", new OutOfMemoryError("Java heap space"));
  }

  @Test
  void theTraceIsToldToThoseWhoAsk() {
    IllegalStateException fault = new IllegalStateException("no such ring");
    isToldWithTrace(run(fault, "faulty", "--debug"));
    isToldWithTrace(run(fault, "--debug", "faulty"));
  }

  private static void isToldWithTrace(Ran ran) {
    assertEquals(70, ran.exitCode());
    assertTrue(ran.err().contains("\tat " + FaultTest.class.getName() + "."), ran.err());
    String last = String.format(SENTENCE, "java.lang.IllegalStateException: no such ring");
    assertTrue(ran.err().endsWith("\n" + last + ".\n"), ran.err());
  }

  @Test
  void aRefusalIsNoFault() {
    assertEquals(1, Ran.run("client", "no-such-plan.xlsx", "--debug").exitCode());
  }
}
