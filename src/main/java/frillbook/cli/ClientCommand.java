package frillbook.cli;

import frillbook.client.ClientPage;
import frillbook.client.PlanFile;
import frillbook.measure.LengthUnit;
import frillbook.press.Colour;
import frillbook.press.PackagedPress;
import frillbook.press.Paper;
import frillbook.press.Press;
import frillbook.pressing.WorkbookPackage;
import frillbook.template.Form;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "client",
    mixinStandardHelpOptions = true,
    description = "Writes a one-page workbook for the client from a plan, values only.")
final class ClientCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "PLAN",
      description = "A workbook that frillbook made, as a spreadsheet program last saved it.")
  private Path plan;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      defaultValue = "for-the-client.xlsx",
      description = {"The page to write, as .xlsx.", "Default: for-the-client.xlsx."})
  private Path output;

  @Option(names = "--force", description = "Replace a file that already exists.")
  private boolean force;

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      description = "Paper for printing: a4 or letter. Default: that of the plan.")
  private Paper paper;

  @Option(
      names = "--colour",
      paramLabel = "COLOUR",
      converter = ColourName.class,
      description = "Colour of the fabric, as for make. Default: that of the plan.")
  private Colour colour;

  @Override
  public void run() {
    PlanFile file = PlanFile.read(plan, PackagedPress.of(LengthUnit.INCH).form());
    refuseToReplacePlan();
    Press press = PackagedPress.of(file.unit());
    Paper sheet = paper == null ? file.paper() : paper;
    Colour chosen = colour == null ? file.colour() : colour;
    MadeWorkbook anew = MadeWorkbook.pressed(press, file.inputs(), sheet, chosen);
    if (!anew.says().isWorkable()) {
      throw new Refusal(Refusal.CANNOT, anew.says().problems());
    }
    PlanWorkbook.put(page(anew, press.form()), output, force);
    anew.says().problems().forEach(spec.commandLine().getErr()::println);
    spec.commandLine().getOut().println("page for the client  " + output);
  }

  /** Of the plan made anew: what else a person has put into the file stays there. */
  private static byte[] page(MadeWorkbook anew, Form form) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(anew.bytes()))) {
      return WorkbookPackage.asItIs(
          ClientPage.of(workbook, form.clientSheet().orElseThrow(), form.phrases()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Also under another name: a link, or the same place by another way. */
  private void refuseToReplacePlan() {
    if (isPlan(output)) {
      throw new Refusal(
          Refusal.CANNOT, output + " is the plan itself. Name another file for the page with -o.");
    }
  }

  private boolean isPlan(Path file) {
    try {
      return Files.exists(file) && Files.isSameFile(plan, file);
    } catch (IOException e) {
      throw new Refusal(
          Refusal.CANNOT, file + " cannot be told from the plan. Name another place with -o.");
    }
  }
}
