package frillbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * LibreOffice Calc without a window, which opens workbooks, has values typed into them, calculates
 * and saves. Its settings are made once for all tests of a process: that takes longer than to
 * calculate a workbook.
 */
public final class Office {
  public static final Program PROGRAM = new Program("soffice", "FRILLBOOK_REQUIRE_SOFFICE");

  private static final String MACRO = "macro:///Standard.Module1.Calculate(\"%s\")";

  private static Path settings;

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
    Path file = Files.createTempFile("office-job", ".txt");
    try {
      start(settings(), MACRO.formatted(Files.write(file, job).toUri()));
    } finally {
      Files.delete(file);
    }
  }

  /** Made by the first start, an empty macro among them; deleted when the process ends. */
  private static synchronized Path settings() throws IOException, InterruptedException {
    if (settings == null) {
      Path folder = Files.createTempDirectory("office-settings");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      start(folder, "--terminate_after_init");
      writeMacro(folder.resolve("settings/user/basic/Standard/Module1.xba"));
      settings = folder;
    }
    return settings;
  }

  private static void start(Path folder, String argument) throws IOException, InterruptedException {
    Path printed = folder.resolve("printed.txt");
    String user = "-env:UserInstallation=" + folder.resolve("settings").toUri();
    List<String> arguments = List.of("--headless", "--norestore", user, argument);
    PROGRAM.await(List.of(PROGRAM.start(arguments, printed)), printed);
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
