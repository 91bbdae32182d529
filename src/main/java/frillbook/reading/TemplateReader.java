package frillbook.reading;

import frillbook.proofreading.TemplateChecks;
import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceFile;
import frillbook.source.SourceText;
import frillbook.source.TemplateException;
import frillbook.source.TemplateSource;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a template: its first file, then a file for each sheet. */
public final class TemplateReader {
  private final TemplateSource source;
  private final Mistakes mistakes = new Mistakes();

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
    List<SourceText> files = first.map(block -> block.texts("sheets")).orElse(List.of());
    first.ifPresent(Block::done);
    List<SheetTemplate> sheets = new ArrayList<>();
    files.forEach(file -> block(file, "sheet").map(SheetReader::read).ifPresent(sheets::add));
    WorkbookTemplate template = new WorkbookTemplate(title, sheets);
    if (sheets.size() == files.size()) {
      // Without every sheet, half the names would seem unknown.
      TemplateChecks.check(template, mistakes);
    }
    if (!mistakes.isEmpty()) {
      throw new TemplateException(mistakes.inReadingOrder());
    }
    return template;
  }

  /** The keys of the file that {@code name} names. */
  private Optional<Block> block(SourceText name, String subject) {
    mistakes.opening(name.value());
    Optional<String> text = source.text(name.value());
    if (text.isEmpty()) {
      mistakes.add(
          name.position(),
          "no file " + name,
          "a file of that name among the templates",
          "add the file or correct the name");
      return Optional.empty();
    }
    SourceFile file = new SourceFile(name.value(), text.get());
    Optional<Node> root = file.compose(mistakes);
    return root.map(node -> new Block(node, new Scope(file, Map.of(), mistakes), subject));
  }
}
