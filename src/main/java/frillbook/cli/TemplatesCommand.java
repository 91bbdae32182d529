package frillbook.cli;

import frillbook.reading.PackagedTemplates;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "templates",
    description = "Writes the built-in templates into a folder, to change and give to --templates.")
final class TemplatesCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "DIR",
      description = "The folder to write. It must not exist yet, or be empty.")
  private Path folder;

  @Override
  public void run() {
    NewFolder.write(PackagedTemplates.files(), folder);
    spec.commandLine().getOut().println("templates  " + folder);
  }
}
