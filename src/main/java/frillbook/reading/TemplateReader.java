package frillbook.reading;

import frillbook.proofreading.TemplateChecks;
import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceFile;
import frillbook.source.SourceText;
import frillbook.source.TemplateException;
import frillbook.source.TemplateFileException;
import frillbook.source.TemplateSource;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a template: its first file, then a file for each sheet. */
public final class TemplateReader {
  /** Ten times as many as the built-in templates have. */
  private static final int MOST_SHEETS = 250;

  private final TemplateSource source;
  private final Mistakes mistakes = new Mistakes();
  private final Extent extent = new Extent();

  private TemplateReader(TemplateSource source) {
    this.source = source;
  }

  /**
   * Reads and checks a whole template.
   *
   * @throws TemplateException with every mistake, when there is any
   */
  public static WorkbookTemplate read(TemplateSource source) {
    return new TemplateReader(source).workbook();
  }

  private WorkbookTemplate workbook() {
    Position start = new Position(TemplateSource.FIRST_FILE, 1, 1);
    Optional<Block> first = block(SourceText.at(start, TemplateSource.FIRST_FILE), "workbook");
    String title = first.map(block -> block.requiredText("title")).orElse("");
    List<SourceText> named = first.map(block -> block.texts("sheets")).orElse(List.of());
    first.ifPresent(Block::done);
    List<SourceText> files = few(named);
    List<SheetTemplate> sheets = new ArrayList<>();
    files.forEach(file -> block(file, "sheet").map(SheetReader::read).ifPresent(sheets::add));
    WorkbookTemplate template = new WorkbookTemplate(title, sheets);
    if (sheets.size() == files.size()) {
      // Without every sheet, half the names would seem unknown.
      TemplateChecks.check(template, mistakes);
    }
    mistakes.refuse();
    return template;
  }

  private List<SourceText> few(List<SourceText> files) {
    if (files.size() <= MOST_SHEETS) {
      return files;
    }
    mistakes.add(
        files.get(MOST_SHEETS).position(),
        files.size() + " sheets",
        "at most " + MOST_SHEETS,
        "take some out of sheets");
    return files.subList(0, MOST_SHEETS);
  }

  /** The keys of the file that {@code name} names. */
  private Optional<Block> block(SourceText name, String subject) {
    mistakes.opening(name.value());
    return text(name)
        .flatMap(
            text -> {
              SourceFile file = new SourceFile(name.value(), text);
              Scope scope = new Scope(file, Map.of(), mistakes, extent, 0);
              return file.compose(mistakes).map(node -> new Block(node, scope, subject));
            });
  }

  private Optional<String> text(SourceText name) {
    try {
      Optional<String> text = source.text(name.value());
      if (text.isEmpty()) {
        mistakes.add(
            name.position(),
            "no file " + name,
            "a file of that name among the templates",
            "add the file or correct the name");
      }
      return text;
    } catch (TemplateFileException e) {
      e.tell(name.position(), mistakes);
      return Optional.empty();
    }
  }
}
