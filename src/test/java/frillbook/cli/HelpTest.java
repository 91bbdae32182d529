package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class HelpTest {
  private static final String EXIT_CODES =
      """

      Exit codes:
        0    done
        1    it cannot be done: parts that do not fit, a plan that cannot be read, a
               file that exists or cannot be written, templates with mistakes
        2    it was asked for wrongly: an unknown name, a value out of its range
        70   a fault of the program itself; --debug says where
      """;

  private static final String BRIEF =
      """
            --currency=CODE      Currency of every price, by its ISO 4217 code.
                                 Default: USD for inch, EUR for cm.
            --debug              Say where a fault of the program itself lies.
            --diameter=LENGTH    Finished diameter, flat.
            --fabric-width=LENGTH
                                 Frill fabric, selvedge to selvedge.
      """;

  private static final String INPUT =
      """
            --input=NAME=VALUE   Any input by name, as often as needed; 'frillbook
                                   inputs' lists them.
      """;

  private static final String SOURCE =
      """
            --ring-spacing=LENGTH
                                 From ring to ring, along a radius.
            --templates=DIR      Read the workbook's templates from DIR instead of
                                   the built-in ones.
            --unit=inch|cm       Unit of every length: inch or cm. Default: inch.
        -V, --version            Print version information and exit.
      """;

  @Test
  void theProgramTellsItsCommands() {
    assertHelp(
        """
        Usage: frillbook [-hV] [--debug] [COMMAND]
        Self-calculating workbooks for spiral-frill round cushions.
              --debug     Say where a fault of the program itself lies.
          -h, --help      Show this help message and exit.
          -V, --version   Print version information and exit.
        Commands:
          make       Writes a workbook that calculates the plan of a cushion.
          plan       Prints the plan of a cushion without writing a workbook.
          client     Writes a one-page workbook for the client from a plan, values only.
          inputs     Lists every input: name, unit, default, range, meaning.
          templates  Writes the built-in templates into a folder, to change and give to
                       --templates.
          demo       Writes an example: three cushions for the bench of a harbour
                       reading room.
        """,
        "--help");
  }

  @Test
  void makeTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook make [-hV] [--debug] [--force] [--colour=COLOUR]
                              [--currency=CODE] [--diameter=LENGTH]
                              [--fabric-width=LENGTH] [--fullness=TIMES] [-o=FILE]
                              [--paper=a4|letter] [--ring-spacing=LENGTH]
                              [--templates=DIR] [--unit=inch|cm] [--input=NAME=VALUE]...
        Writes a workbook that calculates the plan of a cushion.
              --colour=COLOUR      Colour of the fabric in the pictures: six hex digits
                                   or a colour word of CSS, such as teal.
        """
            + BRIEF
            + """
                  --force              Replace a file that already exists.
                  --fullness=TIMES     Strip length before gathering for each length after
                                         it; 2 is double.
              -h, --help               Show this help message and exit.
            """
            + INPUT
            + """
              -o, --output=FILE        The workbook to write, as .xlsx.
                                       Default: cushion.xlsx.
                  --paper=a4|letter    Paper for printing: a4 or letter. Default: letter
                                         for inch, a4 for cm.
            """
            + SOURCE,
        "make",
        "--help");
  }

  @Test
  void planTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook plan [-hV] [--debug] [--json] [--currency=CODE]
                              [--diameter=LENGTH] [--fabric-width=LENGTH]
                              [--fullness=TIMES] [--ring-spacing=LENGTH]
                              [--templates=DIR] [--unit=inch|cm] [--input=NAME=VALUE]...
        Prints the plan of a cushion without writing a workbook.
        """
            + BRIEF
            + """
                  --fullness=TIMES     Strip length before gathering for each length after
                                         it; 2 is double.
              -h, --help               Show this help message and exit.
            """
            + INPUT
            + """
                  --json               Print every name and value as JSON.
            """
            + SOURCE,
        "plan",
        "--help");
  }

  @Test
  void clientTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook client [-hV] [--debug] [--force] [--colour=COLOUR] [-o=FILE]
                                [--paper=a4|letter] PLAN
        Writes a one-page workbook for the client from a plan, values only.
              PLAN                A workbook that frillbook made, as a spreadsheet
                                    program last saved it.
              --colour=COLOUR     Colour of the fabric, as for make. Default: that of
                                    the plan.
              --debug             Say where a fault of the program itself lies.
              --force             Replace a file that already exists.
          -h, --help              Show this help message and exit.
          -o, --output=FILE       The page to write, as .xlsx.
                                  Default: for-the-client.xlsx.
              --paper=a4|letter   Paper for printing: a4 or letter. Default: that of
                                    the plan.
          -V, --version           Print version information and exit.
        """,
        "client",
        "--help");
  }

  @Test
  void inputsTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook inputs [-hV] [--debug] [--currency=CODE] [--templates=DIR]
                                [--unit=inch|cm]
        Lists every input: name, unit, default, range, meaning.
              --currency=CODE   Currency of every price, by its ISO 4217 code.
                                Default: USD for inch, EUR for cm.
              --debug           Say where a fault of the program itself lies.
          -h, --help            Show this help message and exit.
              --templates=DIR   Read the workbook's templates from DIR instead of the
                                  built-in ones.
              --unit=inch|cm    Unit of every length: inch or cm. Default: inch.
          -V, --version         Print version information and exit.
        """,
        "inputs",
        "--help");
  }

  @Test
  void templatesTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook templates [-hV] [--debug] DIR
        Writes the built-in templates into a folder, to change and give to --templates.
              DIR         The folder to write. It must not exist yet, or be empty.
              --debug     Say where a fault of the program itself lies.
          -h, --help      Show this help message and exit.
          -V, --version   Print version information and exit.
        """,
        "templates",
        "--help");
  }

  @Test
  void demoTellsItsOptions() {
    assertHelp(
        """
        Usage: frillbook demo [-hV] [--debug] [-o=FILE]
        Writes an example: three cushions for the bench of a harbour reading room.
              --debug         Say where a fault of the program itself lies.
          -h, --help          Show this help message and exit.
          -o, --output=FILE   The workbook to write, as .xlsx.
                              Default: target/demo-cushion.xlsx.
          -V, --version       Print version information and exit.
        """,
        "demo",
        "--help");
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    Ran ran = Ran.run("--version");
    assertEquals(new Ran(0, ran.out(), ""), ran);
    String version = ran.out().replace("frillbook ", "").strip();
    String build = Files.readString(Path.of("pom.xml"));
    assertTrue(
        build.contains("<artifactId>frillbook</artifactId>\n  <version>" + version + "</version>"),
        ran.out());
  }

  private static void assertHelp(String expected, String... args) {
    assertEquals(new Ran(0, expected + EXIT_CODES, ""), Ran.run(args));
  }
}
