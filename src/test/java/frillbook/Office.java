package frillbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * LibreOffice Calc without a window, which opens workbooks, has values typed into them, calculates
 * and saves. It is started once for all tests of a process, since that takes longer than to
 * calculate a workbook, and does one job at a time; it ends with the process.
 */
public final class Office {
  public static final Program PROGRAM = new Program("soffice", "FRILLBOOK_REQUIRE_SOFFICE");

  private static final String MACRO = "macro:///Standard.Module1.Serve(\"%s\")";

  private static final int MILLISECONDS_BETWEEN_LOOKS = 10;
  private static final int MOST_MINUTES = 10;

  private static Running running;

  /** The program that was started, and the folder in which it finds its jobs. */
  private record Running(Process process, Path folder) {
    Path printed() {
      return printedIn(folder);
    }

    /** Waits until the job is done, which the program says by deleting it. */
    void calculate(List<String> job) throws IOException, InterruptedException {
      Path written = Files.write(folder.resolve("written.txt"), job);
      Path file = folder.resolve("job.txt");
      Files.move(written, file, StandardCopyOption.ATOMIC_MOVE);
      long latest = System.nanoTime() + TimeUnit.MINUTES.toNanos(MOST_MINUTES);
      while (Files.exists(file)) {
        if (!process.isAlive() || System.nanoTime() > latest) {
          process.destroyForcibly();
          throw new IOException(
              PROGRAM.command() + " did not do " + job + ": " + Files.readString(printed()));
        }
        Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
      }
      Path failed = folder.resolve("failed.txt");
      if (Files.exists(failed)) {
        String said = Files.readString(failed);
        Files.delete(failed);
        throw new IOException(PROGRAM.command() + " failed: " + said + job);
      }
    }
  }

  private final List<String> job = new ArrayList<>();

  /** Opens a file; every formula is calculated. */
  public Office open(Path file) {
    return add("open", file.toUri());
  }

  /** Types a Double or a String into the cell of that name, or empties it for null. */
  public Office type(String name, Object value) {
    if (value == null || value.equals("")) {
      return add("blank", name);
    }
    return add(value instanceof Double ? "number" : "text", name, value);
  }

  /** Prints every sheet into a file of pages. */
  public Office print(Path pdf) {
    return add("save", pdf.toUri(), "calc_pdf_Export", "");
  }

  /** Saves the workbook under another name. */
  public Office saveWorkbook(Path xlsx) {
    return add("save", xlsx.toUri(), "Calc MS Excel 2007 XML", "");
  }

  /**
   * Writes the values of every sheet, separated by commas; its name is added to that of the file.
   */
  public Office saveValues(Path csv) {
    // Separator, quotation mark, UTF-8, from the first line on; every text quoted, numbers with all
    // their digits, no formulas, every sheet.
    String how = "44,34,76,1,,0,true,true,false,false,false,-1";
    return add("save", csv.toUri(), "Text - txt - csv (StarCalc)", how);
  }

  public Office close() {
    return add("close");
  }

  private Office add(Object... words) {
    List<String> line = new ArrayList<>();
    for (Object word : words) {
      line.add(word.toString());
    }
    job.add(String.join("\t", line));
    return this;
  }

  /** Does all that was asked for. */
  public void run() throws IOException, InterruptedException {
    calculate(job);
  }

  private static synchronized void calculate(List<String> job)
      throws IOException, InterruptedException {
    if (running == null || !running.process().isAlive()) {
      running = start();
    }
    running.calculate(job);
  }

  /** The first start makes the settings, an empty macro among them. */
  private static Running start() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("office");
    Process first = start(folder, "--terminate_after_init");
    PROGRAM.await(List.of(first), printedIn(folder));
    writeMacro(settingsIn(folder).resolve("user/basic/Standard/Module1.xba"));
    Process process = start(folder, MACRO.formatted(folder.toUri()));
    Runtime.getRuntime().addShutdownHook(new Thread(() -> end(process, folder)));
    return new Running(process, folder);
  }

  private static Process start(Path folder, String argument) throws IOException {
    String user = "-env:UserInstallation=" + settingsIn(folder).toUri();
    List<String> arguments = List.of("--headless", "--norestore", user, argument);
    return PROGRAM.start(arguments, printedIn(folder));
  }

  private static Path settingsIn(Path folder) {
    return folder.resolve("settings");
  }

  private static Path printedIn(Path folder) {
    return folder.resolve("printed.txt");
  }

  private static void end(Process process, Path folder) {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
    process.onExit().join();
    delete(folder);
  }

  private static void writeMacro(Path module) throws IOException {
    String empty = Files.readString(module);
    int end = empty.indexOf('>', empty.indexOf("<script:module")) + 1;
    String basic = basic().replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    Files.writeString(module, empty.substring(0, end) + basic + "</script:module>\n");
  }

  private static String basic() throws IOException {
    try (InputStream in = Office.class.getResourceAsStream("office.bas")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
    } catch (IOException e) {
      System.err.println(folder + " is left behind: " + e.getMessage());
    }
  }
}
