package frillbook.agreement;

import frillbook.Office;
import frillbook.Program;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The pages that LibreOffice prints of a workbook, as lines of text.
 *
 * @param pages page by page, what stands on each, without empty lines
 */
record PrintedPages(List<List<String>> pages) {
  static final Program PDF_TO_TEXT = new Program("pdftotext", Office.PROGRAM.demandedBy());

  /** The pages of a file that LibreOffice has printed. */
  static PrintedPages of(Path pdf, Path folder) throws IOException, InterruptedException {
    Path text = folder.resolve(pdf.getFileName() + ".txt");
    List<String> read = List.of("-layout", "-enc", "UTF-8", pdf.toString(), text.toString());
    run(PDF_TO_TEXT, read, folder);
    return split(Files.readString(text));
  }

  /** The pages that Gnumeric prints of {@code file}. */
  static PrintedPages byGnumeric(Path file, Path folder) throws IOException, InterruptedException {
    Path pdf = folder.resolve("gnumeric-" + pdf(file));
    run(Gnumeric.PROGRAM, List.of("--recalc", file.toString(), pdf.toString()), folder);
    return of(pdf, folder);
  }

  private static String pdf(Path file) {
    return file.getFileName().toString().replace(".xlsx", ".pdf");
  }

  private static void run(Program program, List<String> arguments, Path folder)
      throws IOException, InterruptedException {
    Path said = folder.resolve(program.command() + ".txt");
    program.await(List.of(program.start(arguments, said)), said);
  }

  /** A form feed stands behind every page. */
  private static PrintedPages split(String text) {
    List<List<String>> pages = new ArrayList<>();
    for (String page : text.split("\f")) {
      pages.add(
          Arrays.stream(page.split("\n")).map(String::strip).filter(l -> !l.isEmpty()).toList());
    }
    return new PrintedPages(List.copyOf(pages));
  }

  /** All lines of the pages whose foot is {@code sheet} on the left, and a number on the right. */
  List<String> of(String sheet) {
    return pages.stream().filter(page -> isOf(page, sheet)).flatMap(List::stream).toList();
  }

  private static boolean isOf(List<String> page, String sheet) {
    return !page.isEmpty() && page.get(page.size() - 1).matches(Pattern.quote(sheet) + "\\s+\\d+");
  }

  /** Pages with so little on them that nobody wants them. */
  List<List<String>> nearlyEmpty(int fewestLines) {
    return pages.stream().filter(page -> page.size() < fewestLines).toList();
  }
}
